import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clockDoubt, saneCelsius, type ClockInput } from '../../../src/core/clock/doubt.ts';
import { doughClock } from '../../../src/core/clock/dough-clock.ts';
import { shippedFormula } from '../formula/shipped.ts';

const SOUND: ClockInput = { celsius: 24, p: 0.09, salt: 1.9, rye: 0.15, hydration: 75, rise: 90 };

describe('a temperature to compute with', () => {
  it.each([
    [24, 24, null],
    [3, 3, null],
    [28, 28, null],
    [28.1, 28.1, 'above28'],
    [30, 30, 'above28'],
    [31, 31, 'kitchenHot'],
    [2.9, 2.9, 'kitchenCold'],
    [-40, -5, 'kitchenCold'],
    [400, 55, 'kitchenHot'],
    [Infinity, 55, 'kitchenHot'],
    [-Infinity, -5, 'kitchenCold'],
    [Number.NaN, 21, 'kitchenUnknown'],
  ] as const)('%d °C is taken as %d, in doubt: %s', (given, celsius, doubt) => {
    expect(saneCelsius(given)).toEqual({ celsius, doubt });
  });

  it('is always finite', () => {
    fc.assert(
      fc.property(fc.double(), (given) => {
        expect(Number.isFinite(saneCelsius(given).celsius)).toBe(true);
      }),
    );
  });
});

describe('the doubt of the clock', () => {
  it('is none where the clock was fitted, its ends included', () => {
    expect(clockDoubt(SOUND)).toBeNull();
    const low = { celsius: 3, p: 0.02, salt: 0, rye: 0, hydration: 70, rise: 0 };
    const high = { celsius: 28, p: 0.25, salt: 2.5, rye: 0.4, hydration: 90, rise: 110 };
    expect(clockDoubt(low)).toBeNull();
    expect(clockDoubt(high)).toBeNull();
  });

  it.each<[Partial<ClockInput>, string]>([
    [{ p: 0.019 }, 'pff'],
    [{ p: 0.26 }, 'pff'],
    [{ p: Number.NaN }, 'pff'],
    [{ salt: 2.6 }, 'salt'],
    [{ rye: 0.41 }, 'rye'],
    [{ hydration: 69 }, 'hydration'],
    [{ hydration: 91 }, 'hydration'],
    [{ rise: 111 }, 'rise'],
    [{ celsius: 29, rise: 111 }, 'above28'],
    [{ salt: 3, rye: 1 }, 'salt'],
  ])('of %o is %s', (change, doubt) => {
    expect(clockDoubt({ ...SOUND, ...change })).toBe(doubt);
  });
});

describe('the clock of a formula', () => {
  it('counts rye, and salt once it is in, as shares of all flour', () => {
    const clock = doughClock(shippedFormula('cherry-hazelnut'));
    expect(clock.p).toBe(0.09);
    expect(clock.rise).toBe(0.9);
    expect(clock.unsalted).toBeCloseTo(1 + 0.4 * 0.15, 12);
    expect(clock.salted).toBeCloseTo((1 - 0.06 * 1.9) * (1 + 0.4 * 0.15), 12);
    expect(clock.doubt(24)).toBeNull();
    expect(clock.doubt(29)).toBe('above28');
  });

  it('takes wholemeal wheat as wheat', () => {
    expect(doughClock(shippedFormula('lane-wheat')).unsalted).toBe(1);
  });
});
