import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readyCurve } from '../../../src/core/clock/hours-until.ts';
import { growthForRise } from '../../../src/core/clock/rise.ts';
import type { Path } from '../../../src/core/clock/stretch.ts';
import { quantile } from '../../../src/core/readiness/posterior.ts';
import { weighDough, type DoughSign } from '../../../src/core/readiness/weigh-dough.ts';

const p = 0.08257;
const path: Path = [{ hours: 72, from: 26.5, toward: 22, tau: 5, factor: 0.9455 }];
const jar: Path = [{ hours: 72, from: 26.5, toward: 22, tau: 1.1, factor: 0.9455 }];
const way = { path, jar, p };
const prior = { mean: 0, sd: 0.25 };

const curve = readyCurve(path, 0, 72, (c) => growthForRise(0.9, p, c));
const window = (signs: readonly DoughSign[]): number[] => {
  const posterior = weighDough(prior, signs, way);
  return [0.9, 0.5, 0.1].map((a) => curve(Math.exp(quantile(posterior, a)))!);
};

const sign = fc.oneof(
  fc.record({
    hours: fc.double({ min: 0.5, max: 6, noNaN: true }),
    rise: fc.double({ min: 0, max: 110, noNaN: true }),
    inJar: fc.boolean(),
  }),
  fc.record({ hours: fc.double({ min: 0.5, max: 6, noNaN: true }), domed: fc.boolean() }),
);

describe('signs of a dough', () => {
  it('leave the prior alone where nothing was seen', () => {
    const posterior = weighDough(prior, [], way);
    expect(quantile(posterior, 0.5)).toBeCloseTo(0, 9);
    expect(quantile(posterior, 0.9)).toBeCloseTo(0.25 * 1.2816, 2);
  });

  it('weigh the same in any order', () => {
    fc.assert(
      fc.property(fc.array(sign, { minLength: 2, maxLength: 5 }), (signs) => {
        const [a, b] = [weighDough(prior, signs, way), weighDough(prior, signs.toReversed(), way)];
        for (const q of [0.1, 0.5, 0.9]) expect(quantile(a, q)).toBeCloseTo(quantile(b, q), 9);
      }),
    );
  });

  it('of two rises at one time, the higher never gives a later window', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        fc.double({ min: 0, max: 110, noNaN: true }),
        fc.double({ min: 0, max: 110, noNaN: true }),
        fc.boolean(),
        (hours, one, other, inJar) => {
          const low = window([{ hours, rise: Math.min(one, other), inJar }]);
          const high = window([{ hours, rise: Math.max(one, other), inJar }]);
          for (const [i, at] of high.entries()) expect(at).toBeLessThanOrEqual(low[i]! + 1e-5);
        },
      ),
    );
  });

  it('speak for a quicker dough when its edge is domed early, for a slower one when flat late', () => {
    const [, likely] = window([]);
    expect(window([{ hours: 1.5, domed: true }])[1]).toBeLessThan(likely!);
    expect(window([{ hours: 3, domed: false }])[1]).toBeGreaterThan(likely!);
  });

  it('a jar of it in a cool room that shows as much as the bowl speaks for a quicker starter', () => {
    const bowl = window([{ hours: 3, rise: 60, inJar: false }])[1]!;
    expect(window([{ hours: 3, rise: 60, inJar: true }])[1]).toBeLessThan(bowl);
  });

  it('told as doubled or more long after is no sign of a slow dough, early one of a quick one', () => {
    const [, likely] = window([]);
    const doubled = (hours: number) =>
      window([{ hours, rise: 100, inJar: false, atLeast: true }])[1]!;
    expect(Math.abs(doubled(9) - likely!)).toBeLessThan(0.1);
    expect(doubled(2.5)).toBeLessThan(likely! - 0.5);
    expect(window([{ hours: 9, rise: 100, inJar: false }])[1]).toBeGreaterThan(likely! + 1);
  });

  it('above 110 % a rise is not used', () => {
    expect(window([{ hours: 3, rise: 111, inJar: false }])).toEqual(window([]));
  });
});
