import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gasDissolved } from '../../../src/core/clock/gas-dissolved.ts';
import { gasMade, growthForGas } from '../../../src/core/clock/gas-made.ts';
import { growthForRise, rise } from '../../../src/core/clock/rise.ts';

const growth = fc.double({ min: 0, max: 20, noNaN: true });
const share = fc.double({ min: 0.005, max: 0.5, noNaN: true });
const celsius = fc.double({ min: -5, max: 55, noNaN: true });

describe('gas made', () => {
  it('is none without growth and comes back as the growth that made it', () => {
    fc.assert(
      fc.property(growth, share, (m, p) => {
        expect(gasMade(0, p)).toBe(0);
        expect(Math.abs(growthForGas(gasMade(m, p), p) - m)).toBeLessThan(1e-9);
      }),
    );
  });

  it('grows with growth and with the prefermented share', () => {
    fc.assert(
      fc.property(growth, share, fc.double({ min: 0.001, max: 2, noNaN: true }), (m, p, more) => {
        expect(gasMade(m + more, p)).toBeGreaterThan(gasMade(m, p));
        expect(gasMade(m + 0.1, p * (1 + more))).toBeGreaterThan(gasMade(m + 0.1, p));
      }),
    );
  });

  it('stays finite and joins up where the exponential would overflow', () => {
    expect(gasMade(1e6, 0.08)).toBeCloseTo(3.2 * (0.54e6 + Math.log(0.08)), 3);
    const edge = 700 / 0.54;
    expect(gasMade(edge + 1e-6, 0.08) - gasMade(edge - 1e-6, 0.08)).toBeCloseTo(3.2 * 1.08e-6, 9);
  });
});

describe('gas dissolved', () => {
  it('is less in warmer dough', () => {
    fc.assert(
      fc.property(celsius, (at) => {
        expect(gasDissolved(at + 0.5)).toBeLessThan(gasDissolved(at));
      }),
    );
  });
});

describe('rise', () => {
  it('is none without growth, never negative, and more with more growth or warmth', () => {
    fc.assert(
      fc.property(growth, share, celsius, (m, p, at) => {
        expect(rise(0, p, at)).toBe(0);
        const here = rise(m, p, at);
        expect(here).toBeGreaterThanOrEqual(0);
        expect(rise(m + 0.05, p, at)).toBeGreaterThan(here);
        expect(rise(m + 0.05, p, at + 1)).toBeGreaterThan(rise(m + 0.05, p, at));
      }),
    );
  });

  it('comes back as the growth that made it, to 1e-9', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 12, noNaN: true }), share, celsius, (m, p, at) => {
        expect(Math.abs(growthForRise(rise(m, p, at), p, at) - m)).toBeLessThan(1e-9);
      }),
    );
  });

  it('solves the balance it is made from: G = x + Cs·x/(x + 0.08)', () => {
    const x = (rise(4, 0.0826, 26) * 298.15) / 299.15;
    expect(x + (gasDissolved(26) * x) / (x + 0.08)).toBeCloseTo(gasMade(4, 0.0826), 12);
  });
});
