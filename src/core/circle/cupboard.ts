import { byLetters } from '../speech/measures.ts';
import { plainPart } from '../speech/show-part.ts';
import type { Formula } from '../formula/formula.ts';
import type { Ingredient } from './circle.ts';
import { ingredientKey } from './ingredient-key.ts';

/** The one that is in every bread, as makeRecipe names its line. */
const SALT = 'salt';

/** An ingredient that nobody has said anything of. */
export const freshIngredient = (name: string): Ingredient => ({
  id: ingredientKey(name),
  name: name.trim().replace(/\s+/gu, ' '),
  pack: null,
  counted: null,
  madeOf: null,
});

/**
 * All that the cupboard may hold, by name: what was written down, and what the Book's breads are made
 * of besides, of which nobody has said anything yet.
 */
export function cupboardOf(
  ingredients: readonly Ingredient[],
  formulas: readonly Pick<Formula, 'flours' | 'fillings'>[],
): readonly Ingredient[] {
  const all = new Map(ingredients.map((one) => [one.id, one]));
  const named = formulas.flatMap(({ flours, fillings }) => [
    ...flours.map(({ name }) => name),
    SALT,
    ...fillings.map(({ name }) => name),
  ]);
  for (const name of named) {
    const id = ingredientKey(name);
    if (!all.has(id)) all.set(id, freshIngredient(name));
  }
  return [...all.values()]
    .map((one) => ({ one, shown: plainPart(one.name) }))
    .toSorted((a, b) => byLetters(a.shown, b.shown))
    .map(({ one }) => one);
}

/** The one that a text names, as it is kept or as it is shown; null: there is none of that name. */
export function knownAs(ingredients: readonly Ingredient[], text: string): Ingredient | null {
  const key = ingredientKey(text);
  return (
    ingredients.find(({ id }) => id === key) ??
    ingredients.find(({ name }) => ingredientKey(plainPart(name)) === key) ??
    null
  );
}

/**
 * Those whose name, as it is kept or as it is shown, has all words of a text in it, however they are
 * written; all of them for no words.
 */
export function foundIn(ingredients: readonly Ingredient[], text: string): readonly Ingredient[] {
  const words = ingredientKey(text).split(' ');
  return ingredients.filter(({ id, name }) => {
    const key = `${id} ${ingredientKey(name)} ${ingredientKey(plainPart(name))}`;
    return words.every((word) => key.includes(word));
  });
}

/** One page of a long list. `at`: which, from 0; past the end it is the last one. */
export function pageOf<T>(
  list: readonly T[],
  size: number,
  at: number,
): { readonly shown: readonly T[]; readonly at: number; readonly pages: number } {
  const pages = Math.max(1, Math.ceil(list.length / size));
  const page = Math.min(Math.max(0, at), pages - 1);
  return { shown: list.slice(page * size, (page + 1) * size), at: page, pages };
}
