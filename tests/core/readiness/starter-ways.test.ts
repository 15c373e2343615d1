import { describe, expect, it } from 'vitest';
import { OPENING_BELIEF, type Belief } from '../../../src/core/readiness/belief.ts';
import { foretold, WAYS } from '../../../src/core/readiness/starter-ways.ts';

/** As the sources say them, written a second time. */
const FLOUR = 0.15 ** 2;
const DAY = 0.05 ** 2;
const same = () => 1;

interface Part extends Belief {
  readonly weight: number;
}

const mixed = (parts: readonly Part[]): Belief => {
  const all = parts.reduce((sum, { weight }) => sum + weight, 0);
  const mean = parts.reduce((sum, one) => sum + one.weight * one.mean, 0) / all;
  const variance = parts.reduce(
    (sum, one) => sum + one.weight * (one.sd ** 2 + (one.mean - mean) ** 2),
    0,
  );
  return { mean, sd: Math.sqrt(variance / all) };
};

const density = (x: number, variance: number): number =>
  Math.exp((-x * x) / 2 / variance) / Math.sqrt(variance);

describe('how a starter goes from bake to bake', () => {
  it('has shares of one, and no way is surer of a first bake than the opening belief by much', () => {
    expect(WAYS.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    const before = foretold([], same);
    expect(before.mean).toBe(OPENING_BELIEF.mean);
    expect(before.sd).toBeCloseTo(OPENING_BELIEF.sd, 1);
  });

  it('is after one bake what two normals give, written out', () => {
    const told = { mean: 0.3, sd: 0.08 };
    const parts = WAYS.map(({ share, common }): Part => {
      const first = common(0, 0) + FLOUR + DAY + told.sd ** 2;
      const both = common(0, 1) + FLOUR;
      const next = common(1, 1) + FLOUR + DAY - both ** 2 / first;
      const weight = share * density(told.mean, first);
      return { mean: (both / first) * told.mean, sd: Math.sqrt(next), weight };
    });
    const { mean, sd } = foretold([told], same);
    expect(mean).toBeCloseTo(mixed(parts).mean, 12);
    expect(sd).toBeCloseTo(mixed(parts).sd, 12);
  });

  it('is after two bakes what the inverse of a matrix gives, of two flours', () => {
    const past = [
      { mean: 0.3, sd: 0.08 },
      { mean: -0.2, sd: 0.1 },
    ] as const;
    const [x, y] = past;
    const alike = (i: number, j: number): number => (i === j ? 1 : i + j === 2 ? 0.9 : 0.2);
    const parts = WAYS.map(({ share, common }): Part => {
      const cov = (i: number, j: number): number => common(i, j) + FLOUR * alike(i, j);
      const a = cov(0, 0) + DAY + x.sd ** 2;
      const d = cov(1, 1) + DAY + y.sd ** 2;
      const b = cov(0, 1);
      const det = a * d - b * b;
      const [u, v] = [cov(0, 2), cov(1, 2)];
      const [p, q] = [(d * u - b * v) / det, (a * v - b * u) / det];
      const off = (d * x.mean ** 2 - 2 * b * x.mean * y.mean + a * y.mean ** 2) / det;
      return {
        mean: p * x.mean + q * y.mean,
        sd: Math.sqrt(cov(2, 2) + DAY - p * u - q * v),
        weight: (share * Math.exp(-off / 2)) / Math.sqrt(det),
      };
    });
    const { mean, sd } = foretold(past, alike);
    expect(mean).toBeCloseTo(mixed(parts).mean, 12);
    expect(sd).toBeCloseTo(mixed(parts).sd, 12);
  });

  it('comes of forty bakes within a few milliseconds', () => {
    const past = Array.from({ length: 40 }, (_, i) => ({ mean: Math.sin(i) / 5, sd: 0.07 }));
    foretold(past, same);
    const begun = performance.now();
    for (let n = 0; n < 10; n += 1) foretold(past, same);
    expect((performance.now() - begun) / 10).toBeLessThan(50);
  });
});
