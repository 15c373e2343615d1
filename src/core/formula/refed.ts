import type { Grams } from '../units.ts';
import type { Recipe } from './recipe.ts';
import { roundForScale } from './round-for-scale.ts';

/** What all lines of a feed weigh together. */
export const feedMass = ({ lines }: Pick<Recipe, 'lines'>): Grams =>
  lines.feed.reduce((sum, { grams }) => sum + grams, 0);

/**
 * The recipe with its levain fed from `seed` g of starter: as much levain, as wet, of the same flours.
 * So the weight of the starter alone says how it was fed. As it was where so much starter cannot be.
 * Source: arithmetic; W = h·F of the fresh flour, as in every feed.
 */
export function refed(recipe: Recipe, seed: Grams): Recipe {
  const { formula, lines } = recipe;
  const line = lines.feed.find(({ item }) => item === 'seed');
  const mass = feedMass(recipe);
  if (line === undefined || line.grams === seed || !(seed > 0 && seed < mass)) return recipe;
  const { hydration } = formula.levain;
  const flour = (mass - seed) / (1 + hydration);
  const oldFlour = lines.feed
    .filter(({ item }) => item.startsWith('flour'))
    .reduce((sum, { grams }) => sum + grams, 0);
  const rest = lines.feed
    .filter((one) => one !== line)
    .map((one) => ({
      ...one,
      grams: one.item === 'water' ? flour * hydration : (flour * one.grams) / oldFlour,
    }));
  const rounded = roundForScale(rest, mass - seed, 'one');
  const fresh = rest.map((one, i) => ({ ...one, grams: rounded[i] ?? 0 }));
  const feed = { seed, flour, water: flour * hydration };
  return {
    ...recipe,
    formula: { ...formula, levain: { ...formula.levain, feed } },
    lines: { ...lines, feed: [{ ...line, grams: seed }, ...fresh] },
  };
}
