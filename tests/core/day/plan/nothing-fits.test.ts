import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { plan } from '../../../../src/core/day/plan.ts';
import type { Change, PlanInput, PlanResult, Span } from '../../../../src/core/day/plan/types.ts';
import { anyInstance, bakeSteps, MONDAY, wait } from '../support/instances.ts';

// Many plans each; the machine may have other things to do.
vi.setConfig({ testTimeout: 180_000 });

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;
const at = (day: number, hour: number, minute = 0): number =>
  MONDAY + day * DAY + (hour * 60 + minute) * MINUTE;

type NoFit = Extract<PlanResult, { fits: false }>;
const noFit = (input: PlanInput): NoFit => {
  const result = plan(input);
  if (result.fits !== false) throw new Error('It fits.');
  return result;
};
const fits = (input: PlanInput): boolean => plan(input, { why: false }).fits === true;

/** The question with a change made, the window's end or start as it is asked. */
function changed(
  input: PlanInput,
  change: Change,
  end: 'end' | 'start' = 'end',
  less = 0,
): PlanInput {
  const batches = (name: string, by: (batch: PlanInput['batches'][number]) => object) =>
    input.batches.map((batch) => (batch.name === name ? { ...batch, ...by(batch) } : batch));
  if (change.change === 'due')
    return {
      ...input,
      batches: batches(change.batch, ({ due }) => ({
        due: due! + (change.laterBy - less) * MINUTE,
      })),
    };
  if (change.change !== 'blocked') throw new Error('Another test makes these.');
  const trim = (span: Span): Span =>
    end === 'end'
      ? { ...span, to: span.to - (change.endEarlierBy! - less) * MINUTE }
      : { ...span, from: span.from + (change.startLaterBy! - less) * MINUTE };
  const isIt = (span: Span): boolean => span.name === change.name && span.from === change.from;
  return { ...input, blocked: input.blocked.map((span) => (isIt(span) ? trim(span) : span)) };
}

const night = (day: number): Span => ({
  name: `night ${day}`,
  from: at(day, 22),
  to: at(day + 1, 6),
});
const retarded = { loaves: 2, pots: 1, retarded: true, warmth: 1, ovenTimer: false };
const kitchen = { fridgePlaces: 4, bowls: 1, pots: 1, temperatureC: 24 };
const bread = (due: number, more: Partial<PlanInput> = {}): PlanInput => ({
  planFrom: at(0, 8),
  blocked: [night(0), night(1)],
  ratherNot: [],
  kitchen,
  batches: [{ name: 'bread', steps: bakeSteps(retarded), due }],
  ...more,
});

describe('where nothing fits', () => {
  it('a window is named with the least it has to give at either end', () => {
    // The oven goes on at 6:00 at the soonest, two loads are out at 8:10, an hour to cool.
    const input = bread(at(1, 9));
    const { changes, because } = noFit(input);
    expect(because).toEqual(['planFrom', 'night 0']);
    const bend = changes.find((one) => one.change === 'blocked');
    expect(bend).toMatchObject({ name: 'night 0', endEarlierBy: 10 });
    for (const end of ['end', 'start'] as const) {
      expect(fits(changed(input, bend!, end))).toBe(true);
      expect(fits(changed(input, bend!, end, 5))).toBe(false);
    }
    const due = changes.find((one) => one.change === 'due');
    expect(due).toMatchObject({ laterBy: 10 });
    expect(fits(changed(input, due!))).toBe(true);
    expect(fits(changed(input, due!, 'end', 5))).toBe(false);
  });

  it('a window that cannot bend is to blame, and is in no offer', () => {
    const nights = [{ ...night(0), canBend: false }, night(1)];
    const { changes, because } = noFit(bread(at(1, 9), { blocked: nights }));
    expect(because).toEqual(['planFrom', 'night 0']);
    expect(changes.some((one) => one.change === 'blocked')).toBe(false);
    expect(changes.map((one) => one.change)).toContain('due');
  });

  it('too late a start is told as planFrom', () => {
    expect(noFit(bread(at(1, 8), { planFrom: at(0, 20), blocked: [] })).because).toEqual([
      'planFrom',
    ]);
  });

  it('without anything blocked nothing is to blame', () => {
    const steps = [{ name: 'mix', hands: 5, wait: wait(60, 60, 60, 60, 1), uses: { fridge: 9 } }];
    const { because, changes } = noFit(
      bread(0, { batches: [{ name: 'bread', steps, due: at(1, 9) }] }),
    );
    expect({ because, changes }).toEqual({ because: [], changes: [] });
  });

  it('a timer, a fold or a load less, a stretched proof are offered where they alone do', () => {
    const oven = { name: 'oven on', hands: 5, ...wait(45, 45, 45, 45, 4, 1) };
    const one = (more: object): PlanInput =>
      bread(0, {
        blocked: [{ name: 'out', from: at(0, 12), to: at(0, 13), canBend: false }],
        batches: [
          {
            name: 'bread',
            due: at(0, 14),
            steps: [{ name: 'proof', hands: 5, wait: wait(120, 120, 120, 120, 4), ...more }],
          },
        ],
      });
    // Proof begins at 11:55, the oven would go on at 13:10 by hand.
    expect(plan(one({ beforeNext: oven })).fits).toBe(true);
    const early = { ...oven, ...wait(70, 70, 70, 70, 4) };
    const offers = (input: PlanInput): Change[] => noFit(input).changes;
    expect(offers(one({ beforeNext: early }))).toContainEqual({
      change: 'dropTouch',
      batch: 'bread',
      touch: 'oven on',
    });
    const fold = { name: 'fold', hands: 5, at: 30, earlier: 10, later: 10, weight: 1 };
    const folded = offers(one({ during: [fold] }));
    expect(folded).toContainEqual({ change: 'dropTouch', batch: 'bread', touch: 'fold' });
    const late = one({ wait: wait(90, 100, 110, 115, 4), during: [{ ...fold, at: 60, hands: 0 }] });
    // From 13:00 on there are 55 minutes, up to noon at least 120: five more than the longest.
    expect(offers(late)).toContainEqual({
      change: 'longer',
      batch: 'bread',
      wait: 'proof',
      by: 5,
    });
  });

  it('one load less is offered where there is no time for all', () => {
    const input = bread(at(1, 9));
    const { changes } = noFit(input);
    expect(changes).toContainEqual({ change: 'fewerLoads', batch: 'bread', loads: 1 });
    const fewer = { ...input.batches[0]!, steps: bakeSteps({ ...retarded, loaves: 1 }) };
    expect(fits({ ...input, batches: [fewer] })).toBe(true);
  });
});

describe('on random questions without a plan', () => {
  const without = fc
    .integer({ min: 1, max: 100_000 })
    .map((seed) => anyInstance(seed))
    .filter((input) => !fits(input));

  it('every offer does, five minutes less does not', () =>
    fc.assert(
      fc.property(without, (input) => {
        for (const change of noFit(input).changes) {
          if (change.change !== 'due' && change.change !== 'blocked') continue;
          const ends = change.change === 'due' ? (['end'] as const) : (['end', 'start'] as const);
          for (const end of ends) {
            expect(fits(changed(input, change, end))).toBe(true);
            expect(fits(changed(input, change, end, 5))).toBe(false);
          }
        }
      }),
      { numRuns: 8, seed: 5 },
    ));

  it('a window is offered exactly where leaving it out helps', () =>
    fc.assert(
      fc.property(without, (input) => {
        const offered = noFit(input).changes.flatMap((one) =>
          one.change === 'blocked' ? [one.from] : [],
        );
        const helps = input.blocked.filter((span) =>
          fits({ ...input, blocked: input.blocked.filter((one) => one !== span) }),
        );
        expect(offered.sort()).toEqual(helps.map(({ from }) => from).sort());
      }),
      { numRuns: 4, seed: 6 },
    ));

  it('where no single change does, all of `together` do, and none could be left out', () => {
    let seen = 0;
    for (let seed = 1; seen < 4; seed += 1) {
      const input = anyInstance(seed);
      if (fits(input)) continue;
      const { changes, together = [] } = noFit(input);
      if (changes.length > 0) {
        expect(together).toEqual([]);
        continue;
      }
      if (together.length === 0) continue;
      seen += 1;
      expect(together.length).toBeGreaterThan(1);
      const all = (some: readonly Change[]): PlanInput =>
        some.reduce(
          (one, change) =>
            changed(
              one,
              change,
              change.change === 'blocked' && change.startLaterBy ? 'start' : 'end',
            ),
          input,
        );
      expect(fits(all(together))).toBe(true);
      for (const change of together)
        expect(fits(all(together.filter((one) => one !== change)))).toBe(false);
    }
  });

  it('what is to blame leaves no plan by itself, and any part of it does', () =>
    fc.assert(
      fc.property(without, (input) => {
        const { because } = noFit(input);
        const only = (names: readonly string[]): PlanInput => ({
          ...input,
          planFrom: names.includes('planFrom') ? input.planFrom : input.planFrom - 4 * DAY,
          blocked: input.blocked.filter(({ name }) => names.includes(name!)),
        });
        expect(fits(only(because))).toBe(false);
        for (const name of because)
          expect(fits(only(because.filter((one) => one !== name)))).toBe(true);
      }),
      { numRuns: 12, seed: 7 },
    ));
});
