import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GAMMA_BENDS, gamma } from '../../../src/core/clock/gamma.ts';
import { ripeGrowth, seedShare, USABLE } from '../../../src/core/clock/levain-ripe.ts';
import { prefermented } from '../../../src/core/clock/prefermented.ts';
import { saltAndRye } from '../../../src/core/clock/salt-and-rye.ts';

describe('gamma', () => {
  it('is one at 26 °C, nothing at 0 and below, and the same from 30 up', () => {
    expect(gamma(26)).toBe(1);
    for (const cold of [0, -1, -40]) expect(gamma(cold)).toBe(0);
    for (const hot of [30.1, 35, 90]) expect(gamma(hot)).toBe(gamma(30));
  });

  it('never falls with warmth and has no step', () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 55, noNaN: true }), (at) => {
        expect(gamma(at + 0.1)).toBeGreaterThanOrEqual(gamma(at));
        expect(gamma(at + 1e-6) - gamma(at)).toBeLessThan(1e-6);
      }),
    );
  });

  it('bends where it says it bends: the slope on the left is not the one on the right', () => {
    for (const bend of GAMMA_BENDS) {
      const slope = (at: number) => (gamma(at + 1e-6) - gamma(at - 1e-6)) / 2e-6;
      expect(Math.abs(slope(bend + 1e-3) - slope(bend - 1e-3))).toBeGreaterThan(0.005);
    }
  });
});

describe('salt and rye', () => {
  it('slow and quicken: 6 % a percent of salt, 40 % for all rye, and never below nothing', () => {
    expect(saltAndRye(0, 0)).toBe(1);
    expect(saltAndRye(2, 0)).toBeCloseTo(0.88, 12);
    expect(saltAndRye(0, 1)).toBeCloseTo(1.4, 12);
    expect(saltAndRye(30, 0.5)).toBe(0);
  });
});

describe('a levain', () => {
  it('at 100 % fed 1:a:a is 0.5/(0.5 + a) of seed flour', () => {
    for (const a of [1, 2, 5, 10]) {
      expect(seedShare({ hydration: 1, feed: { seed: 1, flour: a } })).toBeCloseTo(
        0.5 / (0.5 + a),
        12,
      );
    }
  });

  it('is ripe later the leaner it is fed, and never before it is fed', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.98, noNaN: true }), (s) => {
        expect(ripeGrowth(s + 0.01)).toBeLessThanOrEqual(ripeGrowth(s));
        expect(ripeGrowth(s)).toBeGreaterThanOrEqual(0);
      }),
    );
    expect(ripeGrowth(0.99)).toBe(0);
    expect(ripeGrowth(1 / 3)).toBeGreaterThan(USABLE);
  });

  it('given in % of the bowl’s flour is the same share the formula calls PFF', () => {
    // 1000 g of flour in the bowl and 200 g of levain at 100 %: 100 g of 1100
    expect(prefermented(20, 100)).toBeCloseTo(100 / 1100, 12);
    // a stiff one at 60 %: 250 g hold 156.25 g of flour
    expect(prefermented(25, 60)).toBeCloseTo(156.25 / 1156.25, 12);
  });
});
