import type { Recipe } from '../../src/core/formula/recipe.ts';
import { refed } from '../../src/core/formula/refed.ts';
import type { BakeSnapshot, Kitchen } from './kitchen.ts';

/**
 * The recipe as the levain was really fed: by the starter that was weighed, for everything else of the
 * feed follows from it. The formula's own where nobody weighed it here, or a jump lies between.
 */
export const fedRecipe = ({ standing }: Kitchen, { context }: BakeSnapshot): Recipe => {
  const weighed = standing.findLast(
    (fact) =>
      fact.kind === 'press' &&
      fact.who === context.id &&
      fact.act === 'answer' &&
      fact.item === 'seed',
  );
  const grams = weighed?.kind === 'press' ? Number(weighed.value) : NaN;
  return refed(context.recipe, grams);
};
