import type { Grams } from '../units.ts';
import type { WeighLine } from './recipe.ts';
import { roundForScale } from './round-for-scale.ts';

/** A share under this is told to half a gram: a whole one would be a tenth of it. Judgement. */
const SMALL: Grams = 10;

/**
 * What of a weighed filling goes on each of `cells` parts of the sheet: whole grams, or halves of
 * them for a small share or a finer scale. The shares differ by one step at most, and together they
 * are what was weighed (to half a step, where that is no whole number of steps).
 *
 * @example
 * cellShares({ grams: 100, division: 1 }, 3) // → [34, 33, 33]
 * cellShares({ grams: 20, division: 1 }, 3) // → [7, 6.5, 6.5]
 */
export function cellShares(
  { grams, division }: Pick<WeighLine, 'grams' | 'division'>,
  cells: number,
): readonly Grams[] {
  const share = grams / cells;
  const step = division < 1 || share < SMALL ? 0.5 : 1;
  return roundForScale(
    Array.from({ length: cells }, () => ({ grams: share, division: step })),
    grams,
  );
}
