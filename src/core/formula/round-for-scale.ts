import type { Grams } from '../units.ts';

/** A weight to be read off a scale that shows steps of `division` grams (0.1, 1 or 5). */
export interface ScaleLine {
  readonly grams: Grams;
  readonly division: Grams;
}

/**
 * The scale step for a weight: 0.1 g for salt under 50 g and for starter seed, 1 g under 1 kg, 5 g
 * above; never finer than the kitchen's own scale shows, where that is known. Source: common
 * practice, no source.
 */
export function scaleDivision(
  grams: Grams,
  what: 'salt' | 'seed' | 'other' = 'other',
  scale: Grams | null = null,
): Grams {
  const fine = what === 'seed' || (what === 'salt' && grams < 50);
  return Math.max(scale ?? 0, fine ? 0.1 : grams < 1000 ? 1 : 5);
}

/** Half a step over this share of the weight makes it a guess. Judgement. */
const ROUGH = 0.05;

/** Whether a scale of such steps is too coarse for a weight: 8 g of salt by 1 g is off by up to 6 %. */
export const isRough = ({ grams, division }: ScaleLine): boolean =>
  grams > 0 && division / 2 > ROUGH * grams;

/** Everything is counted in whole tenths of a gram, so that sums are exact. */
const TENTHS = 10;

/**
 * Weights rounded for the scale so that their sum stays near `total` (g): each is floored to its
 * own division; with `least` one, what is there at all is one division, not none: a little salt.
 * Then one division is added in order of the largest remainder, in grams, as long as that brings
 * the sum nearer; what the small ones were raised by is taken off the heaviest line that still has
 * a division to spare. The sum ends within half the coarsest division of `total`, when `total` is
 * the sum of the exact lines and such a line is there. Weights are 0 or more. Source: largest
 * remainder method.
 *
 * @example
 * roundForScale([{ grams: 333.6, division: 1 }, { grams: 333.2, division: 1 }], 666.8) // → [334, 333]
 */
export function roundForScale(
  lines: readonly ScaleLine[],
  total: Grams,
  least: 'nothing' | 'one' = 'nothing',
): readonly Grams[] {
  const steps = lines.map(({ division }) => Math.round(division * TENTHS));
  const tenths = lines.map(({ grams }, i) => {
    const step = steps[i] ?? 1;
    const floor = Math.floor((grams * TENTHS) / step + 1e-9) * step;
    return least === 'one' && grams > 1e-9 ? Math.max(step, floor) : floor;
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
  const half = Math.max(0, ...steps) / 2;
  const byWeight = lines.map(({ grams }, i) => ({ i, grams })).sort((a, b) => b.grams - a.grams);
  for (const { i } of byWeight) {
    const step = steps[i] ?? 1;
    while (missing < -half && missing + step <= half && (tenths[i] ?? 0) > step) {
      tenths[i] = (tenths[i] ?? 0) - step;
      missing += step;
    }
  }
  return tenths.map((t) => t / TENTHS);
}
