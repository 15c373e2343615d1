import fc from 'fast-check';
import type { BakePage } from '../../../../../src/core/log/bake-page.ts';
import type { ChartedBake } from '../../../../../src/core/log/chart/bake-panels.ts';
import { doughHours } from '../../../../../src/core/log/dough-hours.ts';
import type { LogClock } from '../../../../../src/core/log/when.ts';
import type { Reading } from '../../../../../src/core/records/fact.ts';
import { DAY, HOUR, MINUTE } from '../../../../../src/core/units.ts';

export const FROM = Date.UTC(2031, 4, 2, 19, 40);

const written = (options: Intl.DateTimeFormatOptions) => {
  const format = new Intl.DateTimeFormat('en-GB', { timeZone: 'UTC', ...options });
  return (at: number): string => format.format(at);
};
const HOURS = {
  plain: written({ hour: '2-digit', minute: '2-digit' }),
  twelve: written({ hour: 'numeric', minute: '2-digit', hour12: true }),
};
const weekday = written({ weekday: 'short' });
const date = written({ day: 'numeric', month: 'short', year: 'numeric' });

/** A wall clock in UTC, on 24 hours or on 12. */
export const clockOf = (twelve = false): LogClock => ({
  hour: twelve ? HOURS.twelve : HOURS.plain,
  day: weekday,
  date,
  midnight: (at) => Math.floor(at / DAY) * DAY,
});

const STAGES = [
  'levain.feed',
  'levain.ripening',
  'mix.weigh',
  'mix.rest',
  'mix.salt',
  'bulk.between',
  'bulk.fold',
  'bulk.proving',
  'shape.divide',
  'shape.basket',
  'proof.counter',
  'proof.retard',
  'oven.queued',
  'cool.cooling',
  'cool.note',
];

const number = (min: number, max: number) =>
  fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);

const reading: fc.Arbitrary<Reading> = fc.oneof(
  fc.record({
    what: fc.constantFrom('doughTemperature', 'kitchenTemperature', 'levainTemperature'),
    celsius: number(-2, 60),
  }),
  fc.record({ what: fc.constant('coreTemperature'), celsius: number(80, 99) }),
  fc
    .record({
      what: fc.constant('rise'),
      percent: fc.integer({ min: -10, max: 250 }),
      of: fc.constantFrom('dough', 'levain'),
      jar: fc.boolean(),
      most: fc.boolean(),
    })
    .map(
      ({ jar, most, ...one }) =>
        ({
          ...one,
          ...(jar ? { in: 'jar' } : {}),
          ...(most ? { atLeast: true } : {}),
        }) as Reading,
    ),
  fc.record({
    what: fc.constant('weight'),
    grams: fc.integer({ min: 50, max: 2000 }),
    of: fc.constant('piece'),
  }),
) as fc.Arbitrary<Reading>;

/** A bake of any length, with any readings at any minutes of it. */
export const anyBake: fc.Arbitrary<ChartedBake> = fc
  .record({
    minutes: fc.oneof(
      fc.integer({ min: 0, max: 90 }),
      fc.integer({ min: 300, max: 3_000 }),
      fc.integer({ min: 3_000, max: 60_000 }),
    ),
    joined: fc.integer({ min: 0, max: STAGES.length - 1 }),
    stays: fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: STAGES.length }),
    readings: fc.array(
      fc.record({ when: fc.double({ min: 0, max: 1, noNaN: true }), reading, odd: fc.boolean() }),
      { maxLength: 14 },
    ),
    calls: fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 8 }),
    beliefs: fc.array(
      fc.record({
        when: fc.double({ min: 0, max: 1, noNaN: true }),
        mean: number(-1, 1),
        sd: number(0.1, 0.5),
      }),
      { maxLength: 6 },
    ),
    wanted: fc.integer({ min: 25, max: 120 }),
    open: fc.boolean(),
  })
  .map(({ minutes, joined, stays, readings, calls, beliefs, wanted, open }) => {
    const at = (share: number): number => FROM + Math.round(share * minutes) * MINUTE;
    const inOrder = [...stays].sort((a, b) => a - b);
    const stages = STAGES.slice(joined)
      .slice(0, inOrder.length + 1)
      .map((stage, n) => ({
        stage,
        from: n === 0 ? FROM : at(inOrder[n - 1]!),
        to: null,
        byDue: false,
        planned: null,
        plannedBy: null,
      }));
    const page: BakePage = {
      bake: 'a',
      name: 'Cherry and hazelnut',
      formula: 'cherry-hazelnut',
      version: 1,
      from: FROM,
      to: open ? null : at(1),
      begun: 2,
      out: 2,
      end: { how: open ? 'open' : 'handedOver' },
      stages,
      readings: readings
        .toSorted((a, b) => a.when - b.when)
        .map(({ when, reading, odd }, n) => ({
          id: `f${n}`,
          at: at(when),
          by: 'hand',
          reading,
          odd,
          was: [],
        })),
      looks: [],
      calls: calls.map((share, n) => ({
        id: `a:call-${n}:${at(share)}`,
        who: 'a',
        stage: `call-${n}`,
        kind: 'act',
        due: at(share),
        heard: null,
        acted: null,
        late: null,
        snoozes: [],
      })),
      loads: [],
      weights: { pieces: [], loaves: [], loss: null },
      note: null,
    };
    const changes = beliefs
      .toSorted((a, b) => a.when - b.when)
      .map(({ when, mean, sd }) => ({
        at: at(when),
        likely: Math.exp(mean),
        low: Math.exp(mean - sd),
        high: Math.exp(mean + sd),
      }));
    return {
      page,
      wanted,
      beliefs: changes.length === 0 ? null : { changes, until: changes.at(-1)!.at + HOUR },
      lived: doughHours(page),
    };
  });
