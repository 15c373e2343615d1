import { logPlots } from '../../speech/words/log-plots.ts';
import { fill } from '../../speech/fill.ts';
import { showHeat } from '../../speech/heats.ts';
import { showLength } from '../../speech/lengths.ts';
import { sayNumber, showNumber } from '../../speech/numbers.ts';
import { niceSpan, ticksIn } from '../chart/axis.ts';
import { boxOf, lineHeight, type Letters } from '../chart/labels.ts';
import type { Chart, Drawing, DrawingRoom, DrawnPart, Spot } from '../drawing.ts';
import type { BulkCurve, CurveSpot } from './bulk-curve.ts';
import { flow, type FlowWord } from './flow.ts';
import { footOf, frame, gutterOf, type Framed, type Tick } from './frame.ts';
import type { PastBake } from './past-bake.ts';
import type { ToldIn } from './told-in.ts';
import { TURN_SHAPES } from './plot-turn.ts';

const words = logPlots.compare;

/** One of the bakes that are held side by side. */
export interface Compared extends PastBake {
  readonly curve: BulkCurve | null;
  readonly chosen: boolean;
}

/** mm between panels, and the least a curve needs to be read. */
const APART = { x: 4, y: 3 } as const;
const LEAST = { width: 14, height: 12 } as const;

const percentOf = (percent: number): string => `${showNumber(percent)} %`;
const lengthOf = (hours: number): string => showLength(hours * 60);

/** What is told of a bake over its panel, the first line first; what matters most goes first. */
function linesOf(bake: Compared, { date, units }: ToldIn): readonly (readonly FlowWord[])[] {
  const { at, turned, rise, bulkHours, dough, coldHours } = bake;
  return [
    [{ text: date(at) }, { text: logPlots.turns[turned], shape: TURN_SHAPES[turned] }],
    [
      {
        text: rise === null ? words.noRise : fill(words.rise, { percent: percentOf(rise.percent) }),
      },
      ...(bulkHours === null ? [] : [{ text: fill(words.bulk, { length: lengthOf(bulkHours) }) }]),
    ],
    [
      ...(dough === null ? [] : [{ text: fill(words.dough, { celsius: showHeat(dough, units) }) }]),
      ...(coldHours === null || coldHours === 0
        ? []
        : [{ text: fill(words.cold, { length: lengthOf(coldHours) }) }]),
    ],
  ];
}

/** How panels stand, and how many of a bake's lines are told over each. */
interface Grid {
  readonly columns: number;
  readonly lines: number;
  /** mm of a panel's curve, and of the words over it. */
  readonly width: number;
  readonly height: number;
  readonly head: number;
}

/** What is written once for all panels: left of the first column, and under the last row. */
interface Rim {
  readonly gutter: number;
  readonly foot: number;
}

const wordsIn = (bake: Compared, lines: number, told: ToldIn): readonly FlowWord[] =>
  linesOf(bake, told).slice(0, lines).flat();

/** The arrangement with the largest curves among those with the most words that leave any room. */
function gridFor(
  bakes: readonly Compared[],
  room: DrawingRoom,
  { gutter, foot }: Rim,
  told: ToldIn,
): Grid {
  const grids = [3, 2, 1, 0].map((lines) =>
    [1, 2, 3, 6]
      .filter((columns) => columns <= bakes.length)
      .map((columns): Grid => {
        const rows = Math.ceil(bakes.length / columns);
        const width = (room.width - gutter - APART.x * (columns - 1)) / columns;
        const most = Math.max(
          ...bakes.map((bake) => flow(wordsIn(bake, lines, told), [0, 0], width, room).lines),
        );
        const head = most * lineHeight(room);
        const height = (room.height - foot - APART.y * (rows - 1)) / rows - head;
        return { columns, lines, width, height, head };
      }),
  );
  const fits = ({ width, height }: Grid): boolean => width >= LEAST.width && height >= LEAST.height;
  const size = ({ width, height }: Grid): number => Math.min(width, 1.6 * height);
  const largest = (all: readonly Grid[]): Grid =>
    all.reduce((a, b) => (size(b) > size(a) ? b : a), all[0]!);
  const some = grids.map((all) => all.filter(fits)).find((all) => all.length > 0);
  return largest(some ?? grids.at(-1)!);
}

function curveParts({ curve, chosen }: Compared, framed: Framed, most: number): DrawnPart[] {
  if (curve === null) return [];
  const { bottom, top } = framed.inner;
  const spot = ({ theta, percent }: CurveSpot): Spot => [
    framed.x(theta),
    framed.y(Math.min(most, Math.max(0, percent))),
  ];
  const end = framed.x(curve.end);
  return [
    {
      kind: 'line',
      weight: 'hair',
      dashed: true,
      at: [
        [end, bottom],
        [end, top],
      ],
    },
    // Beyond the top of the panel the clock's curve is not told.
    {
      kind: 'line',
      weight: chosen ? 'bold' : 'plain',
      at: curve.likely.filter(({ percent }) => percent <= most).map(spot),
    },
    ...curve.told.map((one): DrawnPart => ({ kind: 'mark', shape: 'dot', at: spot(one) })),
  ];
}

/** Only what lies within a panel's own width: a word that would not is left to the table. */
const within = (parts: readonly DrawnPart[], right: number, letters: Letters) =>
  parts.filter((part) => part.kind !== 'text' || boxOf(part, letters).right <= right + 1e-9);

function draw(bakes: readonly Compared[], room: DrawingRoom, told: ToldIn): Drawing {
  const { width, height, cap } = room;
  const spots = bakes.flatMap(({ curve }) => (curve === null ? [] : curve.told));
  const ends = bakes.flatMap(({ curve }) => (curve === null ? [] : [curve.end]));
  const y = [0, niceSpan([0, 100, ...spots.map(({ percent }) => percent)], 4, 1)[1]] as const;
  const x = [0, niceSpan([0, 2, ...ends], 4, 1)[1]] as const;
  const up = ticksIn(y, 3).map((value): Tick => ({ value, label: percentOf(value) }));
  const along = ticksIn(x, 5)
    .map((value): Tick => ({ value, label: fill(words.hours, { n: showNumber(value) }) }))
    .toReversed();
  const rim: Rim = { gutter: gutterOf(up, room), foot: footOf(room) };
  const grid = gridFor(bakes, room, rim, told);
  const parts = bakes.flatMap((bake, n): readonly DrawnPart[] => {
    const [column, row] = [n % grid.columns, Math.floor(n / grid.columns)];
    const isLast = n + grid.columns >= bakes.length;
    const left = rim.gutter + column * (grid.width + APART.x);
    const top = row * (grid.head + grid.height + APART.y);
    const place = {
      left: column === 0 ? 0 : left,
      right: left + grid.width,
      top: top + grid.head,
      bottom: top + grid.head + grid.height + (isLast ? rim.foot : 0),
    };
    const head = flow(wordsIn(bake, grid.lines, told), [left, top + cap], grid.width, room);
    const axes = {
      ...{ x, y },
      along: isLast ? along : [],
      up: column === 0 ? up : [],
      gutter: column === 0 ? rim.gutter : 0,
      weight: bake.chosen ? ('plain' as const) : ('hair' as const),
    };
    const framed = frame(place, axes, room);
    return within(
      [...head.parts, ...framed.parts, ...curveParts(bake, framed, y[1])],
      place.right,
      room,
    );
  });
  return { width, height, parts };
}

function says(bakes: readonly Compared[]): string {
  if (bakes.length === 0) return words.none;
  const percent = (of: number): string => sayNumber(Math.max(0, Math.round(of)), 'percent');
  const rises = bakes.flatMap(({ rise }) => (rise === null ? [] : [rise.percent]));
  const [least, most] = [Math.min(...rises), Math.max(...rises)];
  const chosen = bakes.find((bake) => bake.chosen)?.rise;
  return [
    fill(words.says, { count: sayNumber(bakes.length, null) }),
    ...(rises.length === 0
      ? []
      : [
          least === most
            ? fill(words.saysOneRise, { percent: percent(least) })
            : fill(words.saysRise, { least: percent(least), most: percent(most) }),
        ]),
    ...(chosen && bakes.length > 1
      ? [fill(words.saysChosen, { percent: percent(chosen.percent) })]
      : []),
  ].join(' ');
}

/**
 * Bakes of one bread side by side, six at most: each a small panel of its rise in the bowl against the dough
 * clock, the same axes in all, so that a warm day and a cold one may be compared. Marks are what was told, the
 * line is what the clock makes of it, an upright one the end of the bulk.
 */
export function comparePlot(bakes: readonly Compared[], told: ToldIn): Chart {
  return {
    draw: (room) =>
      bakes.length === 0
        ? { width: room.width, height: room.height, parts: [] }
        : draw(bakes, room, told),
    says: says(bakes),
    table: {
      heads: [
        logPlots.date,
        logPlots.turned,
        words.heads.rise,
        words.heads.bulk,
        words.heads.dough,
        words.heads.cold,
      ],
      rows: bakes.map(({ at, turned, rise, bulkHours, dough, coldHours }) => [
        told.date(at),
        logPlots.turns[turned],
        rise === null ? logPlots.unknown : percentOf(rise.percent),
        bulkHours === null ? logPlots.unknown : lengthOf(bulkHours),
        dough === null ? logPlots.unknown : showHeat(dough, told.units),
        coldHours === null ? logPlots.unknown : lengthOf(coldHours),
      ]),
    },
  };
}
