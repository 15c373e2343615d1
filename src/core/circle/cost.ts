import type { Recipe } from '../formula/recipe.ts';
import type { Grams } from '../units.ts';
import type { CircleWays, Ingredient } from './circle.ts';
import { usesOf } from './uses.ts';

/**
 * Cost of what can be used, in the currency of `cost` and by its unit: edible-portion cost =
 * as-purchased cost ÷ yield. No rounding. Source: a culinary-school handbook's edible-portion costing,
 * from memory; its worked example is in tests/truth.
 *
 * @param usable share of what is bought, over 0 to 1
 * @example
 * usableCost(0.106, 0.75) // → 0.1413
 */
export const usableCost = (cost: number, usable: number): number => cost / usable;

/** One ingredient of a bake and what it costs there. */
export interface CostLine {
  readonly id: string;
  readonly name: string;
  readonly grams: Grams;
  /** Of a gram that can be used; null: nobody has said what its pack costs. */
  readonly perGram: number | null;
  /** Of all its grams in the bake. */
  readonly cost: number | null;
}

/** What a bake costs, in the circle's currency, nothing of it rounded. */
export interface BakeCost {
  readonly loaves: number;
  readonly lines: readonly CostLine[];
  /** What has a price, together. */
  readonly known: number;
  /** What has none, by name: then the cost is at least this. */
  readonly missing: readonly string[];
  /** Of one loaf besides what is in it; null: nobody has said. */
  readonly besides: number | null;
  /** Of one loaf, what is besides counted in. */
  readonly loaf: number;
}

/**
 * What a bake costs by its recipe's lines, the feed's flour and the starter kept back counted in, and
 * one of its loaves. Prices that are missing are named and count as nothing: "at least".
 */
export function costOf(
  recipe: Pick<Recipe, 'lines' | 'loaves'>,
  ingredients: readonly Ingredient[],
  { besides }: Pick<CircleWays, 'besides'>,
): BakeCost {
  const known = new Map(ingredients.map((one) => [one.id, one]));
  const lines = usesOf(recipe).map(({ id, name, grams }): CostLine => {
    const one = known.get(id);
    const pack = one?.pack ?? null;
    const perGram = pack && usableCost(pack.cost / pack.grams, pack.usable);
    return {
      id,
      name: one?.name ?? name,
      grams,
      perGram,
      cost: perGram === null ? null : perGram * grams,
    };
  });
  const sum = lines.reduce((all, { cost }) => all + (cost ?? 0), 0);
  return {
    loaves: recipe.loaves,
    lines,
    known: sum,
    missing: lines.flatMap(({ cost, name }) => (cost === null ? [name] : [])),
    besides,
    loaf: sum / recipe.loaves + (besides ?? 0),
  };
}

/**
 * The baker's own number times the cost; null where there is no such number. A sum, and no advice.
 *
 * @example
 * timesCost(1.12, 3) // → 3.36
 */
export const timesCost = (loaf: number, times: number | null): number | null =>
  times === null ? null : times * loaf;
