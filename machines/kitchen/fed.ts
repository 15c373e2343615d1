import type { Recipe } from '../../src/core/formula/recipe.ts';
import { refed } from '../../src/core/formula/refed.ts';
import type { Instant } from '../../src/core/units.ts';
import type { BakeSnapshot, Kitchen } from './kitchen.ts';

/** When the last line of a bake's feed was weighed in: then its jar was mixed. Nothing where it was not here. */
export const fedAt = (
  { standing }: Kitchen,
  { context }: BakeSnapshot,
): { readonly fedAt?: Instant } => {
  const lines = context.recipe.lines.feed.map(({ item }) => item);
  const last = standing.findLast(
    (fact) =>
      fact.kind === 'press' &&
      fact.who === context.id &&
      fact.act === 'answer' &&
      lines.includes(fact.item ?? ''),
  );
  const weighs = 'mix.weigh' in context.entered;
  return last === undefined || weighs ? {} : { fedAt: last.at };
};

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
