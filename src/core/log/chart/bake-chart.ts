import { logChart as words } from '../../speech/words/log-chart.ts';
import { partNames } from '../../speech/words/names.ts';
import { fill } from '../../speech/fill.ts';
import { sayBelow, showNumber } from '../../speech/numbers.ts';
import { HOUR, type Instant, type Units } from '../../units.ts';
import type { BakeCall } from '../bake-calls.ts';
import type { Chart, ChartTable } from '../drawing.ts';
import { whenIn, type LogClock } from '../when.ts';
import { bakePanels, type ChartedBake, type PanelName } from './bake-panels.ts';
import type { ChartPanel, ChartSeries } from './panel.ts';
import { drawStacked } from './stacked.ts';

/** How a bake is told: in whose units, by which clock, and what steps and calls are called. */
export interface ChartedAs {
  readonly units: Units;
  readonly clock: LogClock;
  nameOf(who: string, stage: string): string;
}

interface Row {
  readonly at: Instant | null;
  readonly cells: readonly [what: string, value: string, between: string];
}

const partOf = (stage: string): string => stage.split('.')[0]!;

const rowsOf = ({ series }: ChartPanel): readonly Row[] =>
  series.flatMap(({ what, points }) =>
    points.map(({ at, shown, between, odd }): Row => ({
      at,
      cells: [odd ? fill(words.odd, { what }) : what, shown, between ?? ''],
    })),
  );

/** The calls of a bake, one beside the other. */
const stripOf = (calls: readonly BakeCall[]): ChartPanel | null =>
  calls.length === 0
    ? null
    : {
        title: '',
        series: [
          {
            label: words.calls,
            what: words.calls,
            shape: 'triangle',
            line: null,
            points: calls.map(({ due }) => ({ at: due, value: 0, shown: '' })),
          },
        ],
        least: 1,
      };

/** No chart shows less time than this. Judgement. */
const LEAST = 2 * HOUR;

/**
 * From the step in which the first value stands to the step behind the last one: a night in the cold, of
 * which nothing is known, would press all else together.
 */
function spanOf(panels: readonly ChartPanel[], { page }: ChartedBake): readonly [Instant, Instant] {
  const marks = panels.flatMap(({ series, band }) => [
    ...series.flatMap(({ points }) => points.map(({ at }) => at)),
    ...(band ? [band.until] : []),
  ]);
  const [first, last] = [Math.min(...marks), Math.max(...marks)];
  const steps = page.stages.map(({ from }) => from);
  const from = steps.findLast((at) => at <= first) ?? first;
  const to = steps.find((at) => at > last) ?? page.to ?? last;
  const end = Math.max(last, Math.min(to, last + (last - from) * 0.25));
  return [from, Math.max(end, from + LEAST)];
}

const said = (
  { what, points }: ChartSeries,
  name: PanelName,
  { units }: ChartedAs,
): string | null => {
  const values = points.filter(({ odd }) => !odd).map(({ value }) => value);
  if (values.length === 0) return null;
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const heat = units.heat === 'F' ? 'degree Fahrenheit' : 'degree';
  const say = (value: number): string => sayBelow(value, name === 'rise' ? 'percent' : heat);
  return least === most
    ? fill(words.says.one, { name: what, from: say(least) })
    : fill(words.says.span, { name: what, from: say(least), until: say(most) });
};

/** From here on a starter is told as slow, or as fast, of its usual speed. Judgement. */
const SPEED = { slow: 0.9, fast: 1.1 } as const;

const starterSays = ({ beliefs }: ChartedBake): string | null => {
  const speed = beliefs?.changes.at(-1)?.likely;
  if (speed === undefined) return null;
  const { slow, usual, fast } = words.says;
  return speed < SPEED.slow ? slow : speed > SPEED.fast ? fast : usual;
};

/**
 * A bake on its time: the named panels that have anything to show, its calls in a strip, its steps above.
 * Null where none of them has. It shows the time in which they have, and the table has a row for each mark,
 * each step and each line across that stands there.
 */
export function bakeChart(
  bake: ChartedBake,
  names: readonly PanelName[],
  as: ChartedAs,
): Chart | null {
  const found = bakePanels(bake, as.units);
  const shown = names.flatMap((name) => (found[name] ? [{ name, panel: found[name] }] : []));
  if (shown.length === 0) return null;
  const { page } = bake;
  const panels = shown.map(({ panel }) => panel);
  const span = spanOf(panels, bake);
  const when = whenIn(span, as.clock);
  const isIn = (at: Instant): boolean => at >= span[0] && at <= span[1];
  const stays = page.stages.filter(({ from }) => isIn(from));
  const calls = page.calls.filter(({ due }) => isIn(due));
  const stages = stays.map(({ stage, from }, n) => ({
    at: from,
    part:
      n > 0 && partOf(stays[n - 1]!.stage) === partOf(stage)
        ? null
        : ((partNames as Readonly<Record<string, string>>)[partOf(stage)] ?? null),
  }));
  const rows: readonly Row[] = [
    ...stays.map(({ stage, from }): Row => ({
      at: from,
      cells: [fill(words.what.stage, { name: as.nameOf(page.bake, stage) }), '', ''],
    })),
    ...calls.map(({ who, stage, due }): Row => ({
      at: due,
      cells: [fill(words.what.call, { name: as.nameOf(who, stage) }), '', ''],
    })),
    ...panels.flatMap(rowsOf),
  ];
  const { time, what, value, between } = words.table;
  const hasBand = panels.some(({ band }) => band);
  const table: ChartTable = {
    heads: [time, what, value, ...(hasBand ? [between] : [])],
    rows: [
      ...rows
        .toSorted((a, b) => a.at! - b.at!)
        .map(({ at, cells }) => [when(at!), ...cells.slice(0, hasBand ? 3 : 2)]),
      ...(panels.some(({ level }) => level)
        ? [
            [
              words.noTime,
              words.what.wanted,
              `${showNumber(bake.wanted)} %`,
              ...(hasBand ? [''] : []),
            ],
          ]
        : []),
    ],
  };
  const sentences = shown.flatMap(({ name, panel }) =>
    name === 'speed'
      ? (starterSays(bake) ?? [])
      : name === 'lived'
        ? []
        : panel.series.flatMap((series) => said(series, name, as) ?? []),
  );
  return {
    draw: (room) =>
      drawStacked({ span, panels, strip: stripOf(calls), stages, clock: as.clock }, room),
    table,
    says: sentences.length > 0 ? sentences.join(' ') : words.says.none,
  };
}
