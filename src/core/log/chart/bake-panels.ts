import type { Slot } from '../../records/reading-slot.ts';
import { slotOf } from '../../records/reading-slot.ts';
import { logChart as words } from '../../speech/words/log-chart.ts';
import { readingNames } from '../../speech/words/readings.ts';
import { fill } from '../../speech/fill.ts';
import { heatSign, showHeat } from '../../speech/heats.ts';
import { showNumber } from '../../speech/numbers.ts';
import { fahrenheitOf, type Units } from '../../units.ts';
import type { BakeBeliefs } from '../bake-beliefs.ts';
import type { BakePage } from '../bake-page.ts';
import type { DoughHours } from '../dough-hours.ts';
import type { ChartPanel, ChartPoint, ChartSeries } from './panel.ts';

/** What can be drawn of a bake on its time. */
export const PANELS = ['heat', 'rise', 'speed', 'lived'] as const;
export type PanelName = (typeof PANELS)[number];

/** What a chart of a bake is made of. */
export interface ChartedBake {
  readonly page: BakePage;
  /** The rise that its formula wants, %. */
  readonly wanted: number;
  readonly beliefs: BakeBeliefs | null;
  readonly lived: readonly DoughHours[];
}

interface Read extends ChartPoint {
  readonly slot: Slot | 'jar';
}

/** To two digits: no belief is finer. */
const twoDigits = (value: number): string => showNumber(Number(value.toPrecision(2)), 2);

/** Readings and what looks answered, as numbers of the baker's units, in order. */
function readIn({ readings, looks }: BakePage, units: Units): readonly Read[] {
  const all = [...readings, ...looks.map((one) => ({ ...one, odd: false }))];
  return all
    .flatMap(({ at, reading, odd }): Read[] => {
      const mark = odd ? { odd } : {};
      if ('celsius' in reading) {
        const { celsius } = reading;
        const value = units.heat === 'F' ? fahrenheitOf(celsius) : celsius;
        return [{ at, value, shown: showHeat(celsius, units), slot: slotOf(reading), ...mark }];
      }
      if (reading.what !== 'rise') return [];
      const { percent, atLeast, in: where } = reading;
      const shown = `${showNumber(percent)} %`.replace('-', '−');
      return [
        {
          at,
          value: percent,
          shown: atLeast ? fill(words.atLeast, { percent: shown }) : shown,
          slot: where === 'jar' ? 'jar' : slotOf(reading),
          ...mark,
        },
      ];
    })
    .toSorted((a, b) => a.at - b.at);
}

type Look = Pick<ChartSeries, 'label' | 'what' | 'shape' | 'line'>;
type Slots = Readonly<Partial<Record<Slot | 'jar', Look>>>;

const heatSlots = (): Slots => ({
  doughTemperature: {
    label: words.dough,
    what: readingNames.doughTemperature,
    shape: 'dot',
    line: 'plain',
  },
  kitchenTemperature: {
    label: words.kitchen,
    what: readingNames.kitchenTemperature,
    shape: 'ring',
    line: 'dashed',
  },
  levainTemperature: {
    label: words.levain,
    what: readingNames.levainTemperature,
    shape: 'diamond',
    line: null,
  },
});
const riseSlots = (): Slots => ({
  'rise.dough': {
    label: words.dough,
    what: readingNames['rise.dough'],
    shape: 'dot',
    line: 'plain',
  },
  jar: { label: words.jar, what: words.what.jar, shape: 'square', line: 'dashed' },
  'rise.levain': {
    label: words.levain,
    what: readingNames['rise.levain'],
    shape: 'diamond',
    line: null,
  },
});

const seriesOf = (read: readonly Read[], slots: Slots): readonly ChartSeries[] =>
  Object.entries(slots).flatMap(([slot, look]) => {
    const points = read.filter((one) => one.slot === slot);
    return points.length > 0 ? [{ ...look, points }] : [];
  });

const speedOf = ({ changes, until }: BakeBeliefs): ChartPanel => ({
  title: words.speed,
  series: [
    {
      label: words.likely,
      what: words.what.speed,
      shape: 'square',
      line: 'steps',
      points: changes.map(({ at, likely, low, high }) => ({
        at,
        value: likely,
        shown: fill(words.times, { number: twoDigits(likely) }),
        between: fill(words.between, { least: twoDigits(low), most: twoDigits(high) }),
      })),
    },
  ],
  band: { label: words.band, points: changes, until },
  least: 0.4,
});

const livedOf = (lived: readonly DoughHours[], units: Units): ChartPanel => ({
  title: fill(words.lived, { heat: showHeat(26, units) }),
  series: [
    {
      label: words.dough,
      what: words.what.lived,
      shape: 'ring',
      line: 'plain',
      points: lived.map(({ at, hours }) => ({
        at,
        value: hours,
        shown: fill(words.hours, { number: showNumber(hours) }),
      })),
    },
  ],
  least: 1,
});

/** The panels of a bake that have anything to show, by their names. Warmth is the dough's, its levain's, and the room's. */
export function bakePanels(
  { page, wanted, beliefs, lived }: ChartedBake,
  units: Units,
): Readonly<Partial<Record<PanelName, ChartPanel>>> {
  const read = readIn(page, units);
  const heats = seriesOf(read, heatSlots());
  const rises = seriesOf(read, riseSlots());
  const percent = `${showNumber(wanted)} %`;
  return {
    ...(heats.length > 0
      ? {
          heat: {
            title: fill(words.heat, { unit: heatSign(units) }),
            series: heats,
            least: units.heat === 'F' ? 4 : 2,
          },
        }
      : {}),
    ...(rises.length > 0
      ? {
          rise: {
            title: words.rise,
            series: rises,
            level: { value: wanted, label: fill(words.wanted, { percent }) },
            least: 50,
          },
        }
      : {}),
    ...(beliefs === null ? {} : { speed: speedOf(beliefs) }),
    ...(lived.length > 1 ? { lived: livedOf(lived, units) } : {}),
  };
}
