import type { Grams } from '../units.ts';
import type { Flour, Formula } from './formula.ts';
import { levainFeed } from './levain-feed.ts';
import { levainShares } from './levain-shares.ts';
import { KEEP_BACK, levainToMake } from './levain-to-make.ts';

/** Fresh flour that a feed takes for so much levain in the dough, g; what the seed brings is not fresh. */
const fedFlour = ({ levain }: Formula, needed: Grams): Grams =>
  levainFeed(levain, levainToMake(needed, KEEP_BACK)).flour;

/**
 * All flour of the largest dough that what is left makes, grams, and the flour that runs out first.
 * A bin has to fill the bowl and feed the levain, with the starter kept back and what sticks to the
 * jar. Infinity where no flour is named; 0 or less where one does not reach to the feed.
 * Source: what is wanted of a flour grows in a line with the dough, so the scarcest decides: arithmetic.
 */
export function binFlour(
  formula: Formula,
  left: Readonly<Record<string, Grams>>,
): { readonly totalFlour: Grams; readonly scarcest: Flour | null } {
  const { flours, levain } = formula;
  const shares = levainShares(flours, levain);
  const fixed = fedFlour(formula, 0);
  const perGram = fedFlour(formula, levain.pff * (1 + levain.hydration)) - fixed;
  let totalFlour = Infinity;
  let scarcest: Flour | null = null;
  for (const [i, flour] of flours.entries()) {
    if (!Object.hasOwn(left, flour.id)) continue;
    const share = shares[i] ?? 0;
    const fed = share / levain.pff;
    const reaches = (left[flour.id]! - fixed * fed) / (flour.pct / 100 - share + perGram * fed);
    if (!(reaches >= totalFlour)) [totalFlour, scarcest] = [reaches, flour];
  }
  return { totalFlour, scarcest };
}
