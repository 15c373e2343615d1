import { feedMass, refed } from '../../formula/refed.ts';
import type { Recipe } from '../../formula/recipe.ts';

const RATIO = /^1:(\d+(?:\.\d+)?):(\d+(?:\.\d+)?)$/;

/** Reckoned in whole tenths of a gram, as fine as a kitchen scale is. Common practice, no source. */
const TENTHS = 10;

/**
 * The recipe with its levain fed as a plan chose it, '1:5:5': as much levain, its starter to the scale's
 * own step. As it was where the choice is no such ratio, or is the recipe's own.
 */
export function chosenFeed(recipe: Recipe, choice: string | undefined): Recipe {
  const [, flour, water] = RATIO.exec(choice ?? '') ?? [];
  const line = recipe.lines.feed.find(({ item }) => item === 'seed');
  if (flour === undefined || water === undefined || line === undefined) return recipe;
  const { seed, flour: usual } = recipe.formula.levain.feed;
  if (usual / seed === Number(flour)) return recipe;
  const exact = feedMass(recipe) / (1 + Number(flour) + Number(water));
  const tenths = Math.max(1, Math.round(line.division * TENTHS));
  return refed(recipe, Math.max(tenths, Math.round((exact * TENTHS) / tenths) * tenths) / TENTHS);
}
