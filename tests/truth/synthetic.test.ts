import { describe, expect, it } from 'vitest';
import { simulateProof } from './synthetic-proof.ts';
import { simulate, type World } from './synthetic.ts';

/** Five fixed seeds; the means of what they scatter about are held. */
const SEEDS = [1, 2, 3, 4, 5];
const DOUGHS = 500;

const BANDS: readonly (readonly [World, readonly number[]])[] = [
  ['right', [83, 66, 35, 20]],
  ['wrong', [86, 68, 37, 22]],
];

const mean = (values: readonly number[]): number =>
  values.reduce((sum, one) => sum + one, 0) / values.length;

/** Coverage figures hold for these synthetic doughs and claim nothing of real ones. */
describe.each(BANDS)('doughs of the %s model', (world, rmse) => {
  const runs = SEEDS.map((seed) => simulate(world, seed, DOUGHS));
  it.each([0, 1, 2, 3])('after %i readings', (n) => {
    const ours = mean(runs.map((run) => run.rmse[n]!));
    expect(Math.abs(ours / rmse[n]! - 1)).toBeLessThan(0.08);
    expect(mean(runs.map((run) => run.coverage[n]!))).toBeGreaterThanOrEqual(0.77);
  });

  it('are judged better than by the best fixed clock, and better with each reading', () => {
    for (const { rmse: errors, fixed, doughs } of runs) {
      expect(doughs).toBeGreaterThan(0.98 * DOUGHS);
      for (const [i, one] of errors.entries()) {
        expect(one).toBeLessThan(i === 0 ? fixed : errors[i - 1]!);
      }
    }
  });
});

describe('warm proofs', () => {
  const runs = SEEDS.map((seed) => simulateProof(seed, DOUGHS));
  it.each([0, 1, 2, 3])('after %i pokes', (n) => {
    const ours = mean(runs.map((run) => run.rmse[n]!));
    expect(Math.abs(ours / [40, 35, 29, 24][n]! - 1)).toBeLessThan(0.08);
    expect(mean(runs.map((run) => run.coverage[n]!))).toBeGreaterThanOrEqual(0.77);
  });

  it('are judged better with each poke, and better than by the best fixed clock', () => {
    for (const { rmse: errors, fixed } of runs) {
      for (const [i, one] of errors.entries()) {
        expect(one).toBeLessThan(i === 0 ? fixed : errors[i - 1]!);
      }
    }
  });
});
