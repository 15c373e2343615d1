import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OPENING_BELIEF } from '../../../src/core/readiness/belief.ts';
import {
  carriedBelief,
  flourLikeness,
  floursOf,
  sinceLook,
  TEACH,
  toldBy,
  type TaughtVigour,
} from '../../../src/core/readiness/carry-over.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const WHEAT = { wheat: 100 };
const withRye = (pct: number) => ({ wheat: 100 - pct, rye: pct });
const told = (mean: number, sd = 0.06, flours = WHEAT as TaughtVigour['flours']): TaughtVigour => ({
  ...{ mean, sd, flours, start: 's', at: 0 },
});

describe('what a bake begins with', () => {
  it('is the opening belief for a starter never baked with', () => {
    expect(carriedBelief([], WHEAT)).toBe(OPENING_BELIEF);
  });

  it('is nearly what the one bake before told, and less sure than that', () => {
    const { mean, sd } = carriedBelief([told(0.2)], WHEAT);
    // Whether it will stay so one bake does not tell: the opening belief still has a share.
    expect(mean).toBeGreaterThan(0.13);
    expect(mean).toBeLessThan(0.2);
    expect(sd).toBeGreaterThan(0.1);
    expect(sd).toBeLessThan(0.25);
  });

  it('follows the last bake of a starter that has walked, and the usual of one that leaps', () => {
    const walked = Array.from({ length: 12 }, (_, i) => told(0.08 * i));
    const leapt = Array.from({ length: 12 }, (_, i) => told(i % 2 === 0 ? -0.3 : 0.3));
    expect(carriedBelief(walked, WHEAT).mean).toBeGreaterThan(0.75);
    expect(carriedBelief(walked, WHEAT).sd).toBeLessThan(0.2);
    expect(Math.abs(carriedBelief(leapt, WHEAT).mean)).toBeLessThan(0.15);
    expect(carriedBelief(leapt, WHEAT).sd).toBeGreaterThan(0.25);
  });

  it('is drawn back to its usual speed where it always came back to it', () => {
    const steady = Array.from({ length: 20 }, (_, i) => told(0.3 + 0.03 * Math.sin(5 * i)));
    const odd = carriedBelief([...steady, told(0)], WHEAT);
    expect(odd.mean).toBeGreaterThan(0.05);
    expect(odd.mean).toBeLessThan(0.28);
  });

  it('leans on a bake of the same flour more than on one of another', () => {
    const other = carriedBelief([told(0.2)], withRye(40));
    const same = carriedBelief([told(0.2)], WHEAT);
    expect(other.mean).toBeLessThan(same.mean);
    expect(other.mean).toBeGreaterThan(0.08);
    expect(other.sd).toBeGreaterThan(same.sd);
    const both = [told(0.3, 0.06, withRye(40)), told(0, 0.06)];
    expect(carriedBelief(both, withRye(40)).mean).toBeGreaterThan(
      carriedBelief(both, WHEAT).mean + 0.05,
    );
    expect(carriedBelief(both, null)).toEqual(carriedBelief(both, WHEAT));
  });

  it('rests on the latest bakes alone', () => {
    const recent = Array.from({ length: TEACH }, (_, i) => told(0.1 + 0.01 * (i % 3)));
    expect(carriedBelief([told(-1), told(-1), ...recent], WHEAT)).toEqual(
      carriedBelief(recent, WHEAT),
    );
  });

  it('is a belief whatever was told', () => {
    const any = fc.record({
      mean: fc.double({ min: -2, max: 2, noNaN: true }),
      sd: fc.double({ min: 0, max: 1_000, noNaN: true }),
      rye: fc.integer({ min: 0, max: 100 }),
    });
    fc.assert(
      fc.property(fc.array(any, { maxLength: TEACH + 5 }), (bakes) => {
        const past = bakes.map(({ mean, sd, rye }) => told(mean, sd, withRye(rye)));
        const belief = carriedBelief(past, WHEAT);
        expect(Number.isFinite(belief.mean)).toBe(true);
        expect(Math.abs(belief.mean)).toBeLessThan(3);
        expect(belief.sd).toBeGreaterThan(0.04);
        expect(belief.sd).toBeLessThan(3);
        // Nothing told, nothing learned.
        const vague = past.map((one) => ({ ...one, sd: 1e6 }));
        expect(carriedBelief(vague, WHEAT).mean).toBeCloseTo(OPENING_BELIEF.mean, 6);
      }),
      { numRuns: 60 },
    );
  });
});

describe('what a bake told by itself', () => {
  it('is what has to be joined with its beginning to come to its end', () => {
    const alone = { mean: 0.4, sd: 0.1 };
    const began = { mean: -0.1, sd: 0.2 };
    const sum = began.sd ** -2 + alone.sd ** -2;
    const mean = (began.mean * began.sd ** -2 + alone.mean * alone.sd ** -2) / sum;
    expect(toldBy(began, { mean, sd: sum ** -0.5 })).toEqual(alone);
  });

  it('is nothing where the belief is as it began, or less sure', () => {
    expect(toldBy({ mean: 0.1, sd: 0.2 }, { mean: 0.1, sd: 0.2 })).toBeNull();
    expect(toldBy({ mean: 0.1, sd: 0.2 }, { mean: 0.3, sd: 0.21 })).toBeNull();
  });
});

describe('flours', () => {
  it('are told by grain, whatever they are called', () => {
    const { formula } = RECIPE;
    const named = { ...formula, flours: [{ ...formula.flours[0]!, id: 'x', name: 'Other' }] };
    expect(flourLikeness(floursOf(formula), floursOf(named))).toBe(1);
  });

  it('are less alike the more of them is another', () => {
    const from = (pct: number): number => flourLikeness(withRye(15), withRye(pct));
    expect(from(15)).toBe(1);
    expect(from(25)).toBeCloseTo(Math.exp(-0.5 * (10 / 15) ** 2), 12);
    expect(from(25)).toBeGreaterThan(from(35));
    expect(from(60)).toBeLessThan(0.02);
  });
});

describe('a starter looked at by itself', () => {
  it('is believed as it showed, a little less sure, and never vaguer than .25', () => {
    expect(sinceLook({ mean: 0.2, sd: 0.06 }).mean).toBe(0.2);
    expect(sinceLook({ mean: 0.2, sd: 0.06 }).sd).toBeCloseTo(Math.hypot(0.06, 0.1), 12);
    expect(sinceLook({ mean: 0, sd: 0.3 }).sd).toBe(0.25);
  });
});
