import type { Formula } from '../formula/formula.ts';
import { makeRecipe } from '../formula/make-recipe.ts';
import { pieceForBread } from '../formula/piece-for-bread.ts';
import { moneyDigits } from '../speech/money.ts';
import type { Grams } from '../units.ts';
import type { Circle } from './circle.ts';
import { costOf, timesCost } from './cost.ts';

/**
 * What one loaf is to cost whoever has it, in the circle's currency, rounded to what it is counted in:
 * the baker's own number times the cost of a loaf in a bake of so many. Null where there is no such
 * number, an ingredient has no price, or the bread cannot be weighed: then nothing honest can be said.
 *
 * @param of `grams`: of a cool loaf; null: as its piece comes out
 */
export function loafPrice(
  formula: Formula,
  of: { readonly loaves: number; readonly grams: Grams | null },
  { ingredients, ways }: Pick<Circle, 'ingredients' | 'ways'>,
  scale: Grams | null,
): number | null {
  if (ways.times === null) return null;
  const piece = of.grams === null ? formula.piece : pieceForBread(of.grams);
  const { recipe } = makeRecipe(formula, { loaves: of.loaves, piece, scale });
  if (recipe === null) return null;
  const cost = costOf(recipe, ingredients, ways);
  const price = cost.missing.length > 0 ? null : timesCost(cost.loaf, ways.times);
  return price === null ? null : Number(price.toFixed(moneyDigits(ways.currency)));
}
