import type { Ingredient } from '../../../src/core/circle/circle.ts';
import { ingredientKey } from '../../../src/core/circle/ingredient-key.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import type { Deed } from '../../../src/core/records/fact.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { HOUR } from '../../../src/core/units.ts';
import { makeRow } from '../../fakes/records.ts';
import { shippedFormula, type SHIPPED } from '../formula/shipped.ts';

export const FROM = Date.UTC(2031, 4, 3, 6);

/** Rows of so many deeds, an hour apart; the n-th fact's id is `f<n>`, from 1. */
export const rowsOf = (...deeds: readonly Deed[]): LogRecord[] =>
  deeds.map((deed, i) => {
    const at = FROM + i * HOUR;
    return { ...makeRow(i + 1), fact: { ...deed, id: `f${i + 1}`, device: 'd', at, raw: at } };
  });

export function recipeOf(name: (typeof SHIPPED)[number], loaves: number): Recipe {
  const formula = shippedFormula(name);
  const { recipe, reason } = makeRecipe(formula, { loaves, piece: formula.piece });
  if (recipe === null) throw new Error(JSON.stringify(reason));
  return recipe;
}

export const startOf = (recipe: Recipe): Deed => ({
  kind: 'start',
  bake: 'bake-2',
  loaves: ['a'],
  from: 'levain.feed',
  recipe,
  kitchen: 22,
});

export const ingredient = (name: string, rest: Partial<Ingredient> = {}): Ingredient => ({
  id: ingredientKey(name),
  name,
  pack: null,
  counted: null,
  madeOf: null,
  ...rest,
});
