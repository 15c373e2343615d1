import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { plan } from '../../../../src/core/day/plan.ts';
import type { PlanInput, PlanResult, Span } from '../../../../src/core/day/plan/types.ts';
import { checkPlan } from '../support/check-plan.ts';
import { anyInstance } from '../support/instances.ts';

// Many plans each; the machine may have other things to do.
vi.setConfig({ testTimeout: 180_000 });

const MINUTE = 60_000;
const SLOT = 5 * MINUTE;
const DAY = 24 * 60 * MINUTE;
/** A question may be hard: the same ones every time. */
const SEED = 20310505;

type Fits = Extract<PlanResult, { fits: true }>;
const fits = (input: PlanInput): Fits | null => {
  const result = plan(input, { why: false });
  return result.fits ? result : null;
};
const costOf = (input: PlanInput): number => fits(input)?.cost ?? Infinity;

/** Questions that have a plan; a few in ten of the random ones do not. */
const withPlan = (count: number) =>
  fc
    .integer({ min: 1, max: 100_000 })
    .map((seed) => anyInstance(seed, count))
    .filter((input) => fits(input) !== null);

const check = (runs: number, count: number, holds: (input: PlanInput, fits: Fits) => void): void =>
  fc.assert(
    fc.property(withPlan(count), (input) => holds(input, fits(input)!)),
    { numRuns: runs, seed: SEED },
  );

const obeys = (input: PlanInput, found: Fits): void => {
  const { wrong, cost } = checkPlan(input, found);
  expect(wrong).toEqual([]);
  expect(found.cost).toBeCloseTo(cost, 6);
};

/** Every instant off the grid by minutes of its own. */
const ragged = (input: PlanInput, by: number): PlanInput => {
  const off = (span: Span, i: number): { from: number; to: number } => ({
    from: span.from + ((i * by) % SLOT),
    to: span.to + ((i * 7 * by) % SLOT),
  });
  return {
    ...input,
    planFrom: input.planFrom + by,
    blocked: input.blocked.map((span, i) => ({ ...span, ...off(span, i) })),
    ratherNot: input.ratherNot.map((span, i) => ({ ...span, ...off(span, i) })),
    ovenBusy: (input.ovenBusy ?? []).map((span, i) => ({ ...span, ...off(span, i) })),
    batches: input.batches.map(({ startAt, ...batch }) => ({
      ...batch,
      due: batch.due === null ? null : batch.due + by,
      ...(startAt === undefined ? {} : { startAt: startAt + by }),
    })),
  };
};

describe('a plan, held against a second reading of the rules', () => {
  it('of one batch keeps them all and costs what it says', () => check(120, 1, obeys));
  it('of two batches too', () => check(15, 2, obeys));
  it('too where no instant lies on the grid', () =>
    fc.assert(
      fc.property(withPlan(1), fc.integer({ min: 1, max: SLOT - 1 }), (input, by) => {
        const off = ragged(input, by);
        const found = fits(off);
        if (found) obeys(off, found);
      }),
      { numRuns: 60, seed: SEED },
    ));
});

describe('the laws of a plan', () => {
  it('is the same a week later', () =>
    check(20, 1, (input, { cost }) => {
      const by = 7 * DAY;
      const later = <T extends Span>(span: T): T => ({
        ...span,
        from: span.from + by,
        to: span.to + by,
      });
      const moved = {
        ...input,
        planFrom: input.planFrom + by,
        blocked: input.blocked.map(later),
        ratherNot: input.ratherNot.map(later),
        ovenBusy: (input.ovenBusy ?? []).map(later),
        batches: input.batches.map(({ startAt, stayPut = {}, ...batch }) => ({
          ...batch,
          due: batch.due === null ? null : batch.due + by,
          ...(startAt === undefined ? {} : { startAt: startAt + by }),
          stayPut: Object.fromEntries(
            Object.entries(stayPut).map(([key, one]) => [key, { ...one, at: one.at + by }]),
          ),
        })),
      };
      expect(costOf(moved)).toBeCloseTo(cost, 9);
    }));

  it('a window less never makes it dearer, nor planning from earlier', () =>
    check(20, 1, (input, { cost }) => {
      for (const span of input.blocked.slice(0, 6)) {
        const blocked = input.blocked.filter((one) => one !== span);
        expect(costOf({ ...input, blocked })).toBeLessThanOrEqual(cost + 1e-9);
      }
      expect(costOf({ ...input, planFrom: input.planFrom - DAY })).toBeLessThanOrEqual(cost + 1e-9);
    }));

  it('two batches never cost less than each alone', () =>
    check(10, 2, (input, { cost }) => {
      const alone = input.batches.map((batch) => costOf({ ...input, batches: [batch] }));
      expect(cost).toBeGreaterThanOrEqual(alone.reduce((sum, one) => sum + one, 0) - 1e-9);
    }));
});

describe('the slack of a touch', () => {
  const at = (input: PlanInput, name: string, instant: number): number => {
    const [batch, ...others] = input.batches;
    return costOf({ ...input, batches: [{ ...batch!, fixed: { [name]: instant } }, ...others] });
  };
  const free = (input: PlanInput, from: number, minutes: number): boolean =>
    minutes === 0 ||
    input.blocked.every((span) => span.to <= from || from + minutes * MINUTE <= span.from);

  it('is what a plan costs with the touch held there', () =>
    check(8, 1, (input, found) => {
      for (const step of input.batches[0]!.steps) {
        const touch = found.touches.find(({ name }) => name === step.name)!;
        const cost = (instant: number): number => at(input, touch.name, instant);
        expect(cost(touch.earliest)).toBeCloseTo(found.cost, 6);
        expect(cost(touch.latest)).toBeCloseTo(found.cost, 6);
        expect(cost(touch.fineUntil)).toBeLessThanOrEqual(found.cost + 1 + 1e-6);
        expect(cost(touch.lastPossible)).toBeLessThan(Infinity);
        for (const more of [1, 2, 5, 30]) {
          const late = touch.lastPossible + more * SLOT;
          if (free(input, late, touch.hands)) expect(cost(late)).toBe(Infinity);
          const dear = touch.fineUntil + more * SLOT;
          if (free(input, dear, touch.hands)) expect(cost(dear)).toBeGreaterThan(found.cost + 1);
          const soon = touch.earliest - more * SLOT;
          if (free(input, soon, touch.hands) && soon >= input.planFrom)
            expect(cost(soon)).toBeGreaterThan(found.cost + 1e-9);
        }
      }
    }));
});
