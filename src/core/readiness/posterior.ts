import type { Belief } from './belief.ts';

/** Points of the grid, and how many sd of the prior it reaches either way. */
const POINTS = 201;
const REACH = 4;

/**
 * What is believed of ln v, point by point: `at` the values, evenly spaced, `log` the log of their
 * weights, the largest 0. Exact up to the grid: no shape is assumed once readings are weighed in.
 */
export interface Posterior {
  readonly at: readonly number[];
  readonly log: readonly number[];
}

/** The prior on a grid of 201 points over its mean ± 4 sd. sd > 0. */
export function openPosterior({ mean, sd }: Belief): Posterior {
  const z = Array.from({ length: POINTS }, (_, i) => -REACH + (2 * REACH * i) / (POINTS - 1));
  return { at: z.map((one) => mean + one * sd), log: z.map((one) => -0.5 * one * one) };
}

/**
 * A reading weighed in: `logLikelihood(v)` says how well each vigour v explains it. A reading that
 * no vigour explains at all (every weight lost) changes nothing.
 */
export function weighIn(
  posterior: Posterior,
  logLikelihood: (vigour: number) => number,
): Posterior {
  const log = posterior.at.map((lnV, i) => posterior.log[i]! + logLikelihood(Math.exp(lnV)));
  const most = Math.max(...log);
  if (!Number.isFinite(most)) return posterior;
  return { at: posterior.at, log: log.map((one) => one - most) };
}

/** Weights by their posterior: one judgement asks for them half a dozen times. */
const known = new WeakMap<Posterior, readonly number[]>();

const weightsOf = (posterior: Posterior): readonly number[] => {
  const found = known.get(posterior);
  if (found) return found;
  const raw = posterior.log.map(Math.exp);
  const sum = raw.reduce((all, one) => all + one, 0);
  const weights = raw.map((one) => one / sum);
  known.set(posterior, weights);
  return weights;
};

/**
 * ln v below which a share `a` (0–1) of the belief lies, by the mid-point CDF, linear between points;
 * outside the outermost mid-points, the outermost points.
 */
export function quantile(posterior: Posterior, a: number): number {
  const weights = weightsOf(posterior);
  const { at } = posterior;
  let below = 0;
  let before = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < at.length; i += 1) {
    const middle = below + weights[i]! / 2;
    if (middle >= a) {
      if (i === 0 || middle === before) return at[i]!;
      return at[i - 1]! + ((a - before) / (middle - before)) * (at[i]! - at[i - 1]!);
    }
    below += weights[i]!;
    before = middle;
  }
  return at.at(-1)!;
}

/**
 * Mean and sd of the posterior: the belief a next bake starts from. Signs that only the outermost
 * point explains leave all weight on it; the sd is never less than what one step of the grid hides.
 */
export function beliefOf(posterior: Posterior): Belief {
  const weights = weightsOf(posterior);
  const mean = weights.reduce((sum, w, i) => sum + w * posterior.at[i]!, 0);
  const variance = weights.reduce((sum, w, i) => sum + w * (posterior.at[i]! - mean) ** 2, 0);
  const step = posterior.at[1]! - posterior.at[0]!;
  return { mean, sd: Math.sqrt(Math.max(variance, step ** 2 / 12)) };
}
