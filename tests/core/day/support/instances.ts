import type { Batch, PlanInput, Span, Step, Wait } from '../../../../src/core/day/plan/types.ts';
import { seeded, type Seeded } from './seeded.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;
/** A Monday, 00:00 UTC. */
export const MONDAY = Date.UTC(2031, 4, 5);

const fives = (minutes: number): number => Math.round(minutes / 5) * 5;

export const wait = (
  min: number,
  from: number,
  to: number,
  max: number,
  weightShort: number,
  weightLong = weightShort,
): Wait => ({ min, typicalFrom: from, typicalTo: to, max, weightShort, weightLong });

export interface Made {
  readonly loaves: number;
  readonly pots: number;
  readonly retarded: boolean;
  /** Factor on what the dough's warmth decides. */
  readonly warmth: number;
  readonly ovenTimer: boolean;
}

const load = (i: number, n: number, { loaves, pots, retarded }: Made): Step[] => {
  const cold = retarded ? Math.max(0, loaves - pots * i) : 0;
  const uses = { oven: 1 as const, ...(cold > 0 ? { fridge: cold } : {}) };
  const rigid = wait(15, 15, 15, 15, 0);
  const left = cold > 0 && i < n ? { uses: { fridge: cold } } : {};
  return [
    { name: `load ${i}`, hands: 5, wait: rigid, uses },
    { name: `lid lift ${i}`, hands: 5, wait: rigid, uses },
    {
      name: `unload ${i}`,
      hands: 5,
      wait: i < n ? wait(5, 10, 10, 15, 3, 2) : wait(60, 120, 180, 900, 4),
      ovenAfter: 5,
      ...left,
    },
  ];
};

/** A whole bake as a home baker makes it, every length given. */
export function bakeSteps(made: Made): Step[] {
  const { loaves, pots, retarded, warmth, ovenTimer } = made;
  const loads = Math.ceil(loaves / pots);
  const k = (minutes: number): number => fives(minutes * warmth);
  const feed = (name: string, from: number, to: number, extra: number) => ({
    ...wait(k(from) - 90, k(from), k(to), k(to) + 90, 6),
    name,
    extra,
  });
  const oven = { name: 'oven on', hands: ovenTimer ? 0 : 5, ...wait(30, 45, 45, 75, 4, 1) };
  return [
    {
      name: 'feed levain',
      hands: 5,
      wait: {
        choices: [
          feed('1:1:1', 240, 300, 0.2),
          feed('1:2:2', 300, 360, 0),
          feed('1:5:5', 480, 600, 0),
          feed('1:10:10', 600, 780, 0.2),
        ],
      },
    },
    { name: 'mix', hands: 10, wait: wait(20, 30, 30, 60, 1), uses: { bowls: 1 } },
    {
      name: 'salt and water',
      hands: 10,
      wait: wait(k(150), k(240), k(240), k(360), 10),
      during: [
        { name: 'fold', hands: 5, at: 30, earlier: 15, later: 15, weight: 1 },
        { name: 'lamination', hands: 10, at: 60, earlier: 15, later: 15, weight: 1 },
      ],
      uses: { bowls: 1 },
    },
    { name: 'divide', hands: Math.max(10, fives(2 * loaves)), wait: wait(10, 20, 20, 30, 2) },
    retarded
      ? { name: 'shape', hands: Math.max(5, fives(2 * loaves)), wait: wait(0, 20, 20, 60, 3) }
      : {
          name: 'shape',
          hands: Math.max(5, fives(2 * loaves)),
          wait: wait(k(75), k(120), k(120), k(210), 8),
          beforeNext: oven,
        },
    ...(retarded
      ? [
          {
            name: 'to fridge',
            hands: 5,
            wait: wait(480, 840, 840, 2880, 6, 3),
            beforeNext: oven,
            uses: { fridge: loaves },
          },
        ]
      : []),
    ...Array.from({ length: loads }, (_, i) => load(i + 1, loads, made)).flat(),
  ];
}

const anyMade = (from: Seeded): Made => ({
  loaves: from.whole(1, 6),
  pots: from.whole(1, 2),
  retarded: from.chance(0.7),
  warmth: 0.8 + 0.5 * from.next(),
  ovenTimer: from.chance(0.3),
});

/** Nights, work and errands of a week. */
function anyDays(from: Seeded): Pick<PlanInput, 'blocked' | 'ratherNot'> {
  const blocked: Span[] = [];
  const ratherNot: PlanInput['ratherNot'] = [];
  const sleep = from.whole(21, 23) * HOUR + from.whole(0, 11) * 5 * MINUTE;
  const wake = from.whole(5, 8) * HOUR + from.whole(0, 11) * 5 * MINUTE;
  const works = from.chance(0.6);
  for (let day = -1; day < 5; day += 1) {
    const at = MONDAY + day * DAY;
    blocked.push({ name: `night ${day}`, from: at + sleep, to: at + DAY + wake });
    if (works && from.chance(0.8))
      blocked.push({
        name: `work ${day}`,
        from: at + 9 * HOUR,
        to: at + from.whole(13, 17) * HOUR,
      });
    if (from.chance(0.4)) {
      const begins = at + from.whole(80, 220) * 5 * MINUTE;
      blocked.push({
        name: `out ${day}`,
        from: begins,
        to: begins + from.whole(6, 30) * 5 * MINUTE,
      });
    }
    const dinner = at + 18 * HOUR;
    ratherNot.push({
      name: `dinner ${day}`,
      from: dinner,
      to: dinner + HOUR,
      cost: from.whole(1, 2),
    });
    if (from.chance(0.3))
      ratherNot.push({ from: dinner + HOUR / 2, to: dinner + 3 * HOUR, cost: 1 });
  }
  return { blocked, ratherNot };
}

function anyBatch(from: Seeded, name: string): { batch: Batch; made: Made } {
  const made = anyMade(from);
  const steps = bakeSteps(made);
  const hours = from.whole(made.retarded ? 28 : 14, made.retarded ? 60 : 40);
  const asksWhen = from.chance(0.85);
  const at = MONDAY + 6 * HOUR + from.whole(0, 100) * 5 * MINUTE;
  const batch: Batch = asksWhen
    ? { name, steps, due: MONDAY + hours * HOUR + from.whole(0, 11) * 5 * MINUTE }
    : { name, steps, due: null, startAt: at, finishCostPerHour: 0.2, horizonMinutes: 4320 };
  if (from.chance(0.2)) {
    const near = (batch.due ?? at + 20 * HOUR) - from.whole(2, 8) * HOUR;
    batch.stayPut = {
      divide: { at: near, costPer5Min: 0.02 },
      fold: { at: near, costPer5Min: 0.02 },
    };
  }
  return { batch, made };
}

/** The same with a long touch inside the wait in which the oven goes on, so that the two may meet. */
export const withPoke = (input: PlanInput): PlanInput => ({
  ...input,
  batches: input.batches.map((batch) => ({
    ...batch,
    steps: batch.steps.map((step) => {
      if (!step.beforeNext || step.uses) return step;
      const at = (step.wait as Wait).typicalFrom - 60;
      const poke = { name: 'poke', hands: 15, at, earlier: Math.min(at, 40), later: 40, weight: 3 };
      return { ...step, during: [poke], beforeNext: { ...step.beforeNext, hands: 10 } };
    }),
  })),
});

/** A random question with so many batches, the same for the same seed on every machine. */
export function anyInstance(seed: number, count = 1): PlanInput {
  const from = seeded(seed);
  const days = anyDays(from);
  const made = Array.from({ length: count }, (_, i) => anyBatch(from, `bake ${i + 1}`));
  const busyAt = MONDAY + from.whole(0, 400) * 5 * MINUTE;
  return {
    planFrom: MONDAY + from.whole(0, 60) * 5 * MINUTE,
    ...days,
    ovenBusy: from.chance(0.4)
      ? [{ from: busyAt, to: busyAt + from.whole(6, 30) * 5 * MINUTE }]
      : [],
    kitchen: {
      fridgePlaces: from.whole(6, 10),
      bowls: from.whole(1, 2),
      pots: Math.max(...made.map((one) => one.made.pots)),
      temperatureC: 24,
    },
    batches: made.map((one) => one.batch),
  };
}
