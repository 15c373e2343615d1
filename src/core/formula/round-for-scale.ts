import type { Grams } from '../units.ts';

/** A weight to be read off a scale that shows steps of `division` grams (0.1, 1 or 5). */
export interface ScaleLine {
  readonly grams: Grams;
  readonly division: Grams;
}

/**
 * The scale step for a weight: 0.1 g for salt under 50 g and for starter seed, 1 g under 1 kg, 5 g
 * above. Source: common practice, no source.
 */
export function scaleDivision(grams: Grams, what: 'salt' | 'seed' | 'other' = 'other'): Grams {
  if (what === 'seed' || (what === 'salt' && grams < 50)) return 0.1;
  return grams < 1000 ? 1 : 5;
}

/** Everything is counted in whole tenths of a gram, so that sums are exact. */
const TENTHS = 10;

/**
 * Weights rounded for the scale so that their sum stays near `total` (g): each is floored to its
 * own division, then one division is added in order of the largest remainder, in grams, as long as
 * that brings the sum nearer. The sum ends within half the coarsest division of `total`, when
 * `total` is the sum of the exact lines. Weights are 0 or more. Source: largest remainder method.
 *
 * @example
 * roundForScale([{ grams: 333.6, division: 1 }, { grams: 333.2, division: 1 }], 666.8) // → [334, 333]
 */
export function roundForScale(lines: readonly ScaleLine[], total: Grams): readonly Grams[] {
  const steps = lines.map(({ division }) => Math.round(division * TENTHS));
  const tenths = lines.map(({ grams }, i) => {
    const step = steps[i] ?? 1;
    return Math.floor((grams * TENTHS) / step + 1e-9) * step;
  });
  let missing = total * TENTHS - tenths.reduce((sum, t) => sum + t, 0);
  const byRemainder = lines
    .map(({ grams }, i) => ({ i, remainder: grams * TENTHS - (tenths[i] ?? 0) }))
    .sort((a, b) => b.remainder - a.remainder || a.i - b.i);
  for (const { i } of byRemainder) {
    const step = steps[i] ?? 1;
    if (Math.abs(missing - step) >= Math.abs(missing)) break;
    tenths[i] = (tenths[i] ?? 0) + step;
    missing -= step;
  }
  return tenths.map((t) => t / TENTHS);
}
