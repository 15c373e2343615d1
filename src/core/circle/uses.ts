import type { Recipe } from '../formula/recipe.ts';
import type { Grams } from '../units.ts';
import { ingredientKey } from './ingredient-key.ts';

/** So much of one ingredient as it goes onto the scale, g. `id`: its key. */
export interface Use {
  readonly id: string;
  /** As it was first written. */
  readonly name: string;
  readonly grams: Grams;
}

/** What is bought: flour, also the feed's, salt, fillings. Water runs from the tap; the seed is the baker's own. */
const isBought = (item: string): boolean => item === 'salt' || /^(flour|filling):/.test(item);

/**
 * What is used in all, each ingredient once, in the order of first mention.
 *
 * @example
 * usesTogether([{ id: 'rye', name: 'Rye', grams: 20 }, { id: 'rye', name: 'rye', grams: 30 }]) // → [{ id: 'rye', name: 'Rye', grams: 50 }]
 */
export function usesTogether(uses: Iterable<Use>): readonly Use[] {
  const all = new Map<string, Use>();
  for (const use of uses) {
    const known = all.get(use.id);
    all.set(use.id, known ? { ...known, grams: known.grams + use.grams } : use);
  }
  return [...all.values()];
}

/**
 * What a bake takes out of the store cupboard, as it is weighed: the flour of its feed counted in, so
 * that of the starter kept back too. Not bought and not here: water, a soaker's water, the seed.
 * A line of nothing is left out.
 */
export const usesOf = ({ lines: { feed, first, second, filling } }: Pick<Recipe, 'lines'>) =>
  usesTogether(
    [...first, ...feed, ...second, ...filling].flatMap(({ item, name, grams }): readonly Use[] =>
      isBought(item) && grams > 0 ? [{ id: ingredientKey(name), name, grams }] : [],
    ),
  );
