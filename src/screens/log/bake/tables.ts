import type { BakeCall } from '../../../core/log/bake-calls.ts';
import type { BakeLoad } from '../../../core/log/bake-loads.ts';
import type { BakeStay } from '../../../core/log/bake-stages.ts';
import type { ChartTable } from '../../../core/log/drawing.ts';
import type { Reading } from '../../../core/records/fact.ts';
import type { PotName } from '../../../core/kitchen/pots.ts';
import { potOf } from '../../../core/records/lane.ts';
import { slotOf } from '../../../core/records/reading-slot.ts';
import { logBake as words } from '../../../core/speech/words/log-bake.ts';
import { pots } from '../../../core/speech/words/names.ts';
import { readingNames } from '../../../core/speech/words/readings.ts';
import { said } from '../../../core/speech/facts.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showLength } from '../../../core/speech/lengths.ts';
import { showNumber } from '../../../core/speech/numbers.ts';
import { sayReading, showReading } from '../../../core/speech/reading-text.ts';
import { showWeight } from '../../../core/speech/weights.ts';
import { MINUTE, type Instant } from '../../../core/units.ts';
import { potTitle } from '../../pot-of.ts';
import { loavesShown } from './first-table.ts';
import type { Telling } from './telling.ts';

/** The pages of a bake behind its first one, in their order. */
export const PAGES = ['times', 'readings', 'calls', 'weights', 'loads'] as const;
export type PageName = (typeof PAGES)[number];

/** One of them: its rows, a line under its name, and the whole of it as it is said. */
export interface ToldPage {
  readonly table: ChartTable;
  readonly detail?: string;
  readonly says: string;
}

const apart = (minutes: number): string => {
  if (Math.abs(minutes) < 1) return words.onTime;
  const length = showLength(Math.abs(minutes));
  return fill(minutes > 0 ? words.late : words.early, { length });
};

const plannedBy = (stages: readonly BakeStay[]): string => {
  const [byPlan, byBench] = (['plan', 'bench'] as const).map((who) =>
    stages.some((stay) => stay.plannedBy === who),
  );
  if (byPlan) return fill(words.planned.plan, { sign: words.benchSign });
  return byBench ? words.planned.bench : words.planned.none;
};

function timesPage({ page, when, nameOf, clock }: Telling): ToldPage {
  const { stages, bake } = page;
  const hasPlan = stages.some((stay) => stay.plannedBy === 'plan');
  const planned = ({ planned: at, plannedBy: who }: BakeStay): string =>
    at === null ? words.none : `${when(at)}${hasPlan && who === 'bench' ? words.benchSign : ''}`;
  return {
    table: {
      heads: words.heads.times,
      rows: stages.map((stay) => [
        nameOf(bake, stay.stage),
        planned(stay),
        when(stay.from),
        stay.planned === null ? words.none : apart((stay.from - stay.planned) / MINUTE),
      ]),
    },
    detail: plannedBy(stages),
    says: stages
      .map(({ stage, from }) =>
        fill(words.says.step, { name: nameOf(bake, stage), ...said({ time: clock.hour(from) }) }),
      )
      .join(' '),
  };
}

interface Taken {
  readonly at: Instant;
  readonly reading: Reading;
  readonly marks: readonly string[];
}

function readingsPage({ page, when, units }: Telling): ToldPage | null {
  const { marks } = words;
  const taken = page.readings.map(({ at, reading, by, odd, was }): Taken => ({
    at,
    reading,
    marks: [
      ...(odd ? [marks.odd] : []),
      ...was.map((one) => fill(marks.was, { got: showReading(one.reading, units) })),
      ...(by === 'probe' ? [marks.probe] : []),
    ],
  }));
  const looked = page.looks.map((one): Taken => ({ ...one, marks: [marks.look] }));
  const all = [...taken, ...looked].toSorted((a, b) => a.at - b.at);
  if (all.length === 0) return null;
  const columns = all.some((one) => one.marks.length > 0) ? 4 : 3;
  return {
    table: {
      heads: words.heads.readings.slice(0, columns),
      rows: all.map(({ at, reading, marks: own }) =>
        [
          when(at),
          readingNames[slotOf(reading)],
          showReading(reading, units),
          own.join(', '),
        ].slice(0, columns),
      ),
    },
    says: all
      .map(({ reading }) =>
        fill(words.says.reading, {
          name: readingNames[slotOf(reading)],
          got: sayReading(reading, units),
        }),
      )
      .join(' '),
  };
}

const answered = ({ late, snoozes }: BakeCall): string => {
  const how =
    late === null
      ? words.answered.never
      : late < 1
        ? words.answered.atOnce
        : fill(words.answered.in, { length: showLength(late) });
  const times = snoozes.length;
  if (times === 0) return how;
  const off = times === 1 ? words.answered.offOnce : fill(words.answered.off, { times });
  return `${how}, ${off}`;
};

function callsPage({ page, when, nameOf, saidOf }: Telling): ToldPage | null {
  const { calls } = page;
  if (calls.length === 0) return null;
  const { says } = words;
  return {
    table: {
      heads: words.heads.calls,
      rows: calls.map((call) => [nameOf(call.who, call.stage), when(call.due), answered(call)]),
    },
    says: calls
      .map(({ who, stage, late }) => {
        const name = saidOf(who, stage);
        if (late === null) return fill(says.never, { name });
        return late < 1
          ? fill(says.now, { name })
          : fill(says.later, { name, ...said({ minutes: late }) });
      })
      .join(' '),
  };
}

function weightsPage({ page, units }: Telling): ToldPage | null {
  const { pieces, loaves, loss } = page.weights;
  const weighed = page.readings.filter(({ reading }) => 'grams' in reading);
  if (weighed.length === 0) return null;
  const rows = [
    ...pieces.map((grams, n) => [
      fill(words.weights.piece, { n: n + 1 }),
      showWeight(grams, units),
    ]),
    ...loaves.map((grams, n) => [fill(words.weights.loaf, { n: n + 1 }), showWeight(grams, units)]),
    ...(loss === null
      ? []
      : [[words.weights.loss, fill(words.weights.percent, { percent: showNumber(loss) })]]),
  ];
  if (rows.length === 0) return null;
  return {
    table: { heads: words.heads.weights, rows },
    says: weighed
      .map(({ reading }) =>
        fill(words.says.reading, {
          name: readingNames[slotOf(reading)],
          got: sayReading(reading, units),
        }),
      )
      .join(' '),
  };
}

const placeOf = ({ lane, vessel }: BakeLoad): string =>
  potTitle(lane) ?? words.vessels[vessel ?? 'pot'];

/** Its pot, or where no pots are told apart what is told of it. */
const saidPlace = ({ lane }: BakeLoad): string => {
  const pot = potTitle(lane) === null ? undefined : pots[potOf(lane) as PotName];
  return pot === undefined ? readingNames.crust : `${pot.charAt(0).toUpperCase()}${pot.slice(1)}`;
};

function loadsPage({ page, when }: Telling): ToldPage | null {
  const { loads } = page;
  if (loads.length === 0) return null;
  const at = (instant: Instant | null): string => (instant === null ? words.none : when(instant));
  return {
    table: {
      heads: words.heads.loads,
      rows: loads.map((load) => [
        fill(words.loaves, { place: placeOf(load), loaves: loavesShown(load.loaves.length) }),
        when(load.in),
        at(load.opened),
        at(load.out),
        load.colour === null ? words.none : words.colours[load.colour],
      ]),
    },
    says: loads
      .flatMap((load) =>
        load.colour === null
          ? []
          : [
              fill(words.says.load, {
                name: saidPlace(load),
                colour: words.colours[load.colour].toLowerCase(),
              }),
            ],
      )
      .join(' '),
  };
}

/** The pages that have anything to tell, by their names. */
export const pagesOf = (telling: Telling): Readonly<Partial<Record<PageName, ToldPage>>> => {
  const found = {
    times: timesPage(telling),
    readings: readingsPage(telling),
    calls: callsPage(telling),
    weights: weightsPage(telling),
    loads: loadsPage(telling),
  };
  return Object.fromEntries(Object.entries(found).filter(([, page]) => page !== null));
};
