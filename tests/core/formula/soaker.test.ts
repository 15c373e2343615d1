import { describe, expect, it } from 'vitest';
import { amounts } from '../../../src/core/formula/amounts.ts';
import { fillingShare } from '../../../src/core/formula/filling-share.ts';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { goesIn } from '../../../src/core/formula/goes-in.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import { shippedFormula } from './shipped.ts';

const wheat = shippedFormula('lane-wheat');
/** 100/75/2 with 10 % of oats that soak in one and a half times their weight: 202 %. */
const oats: Formula = {
  ...wheat,
  hydration: 75,
  salt: 2,
  fillings: [
    {
      id: 'oats',
      name: 'oats',
      pct: 10,
      keeps: 'shelf',
      allergens: ['gluten (oats)'],
      soak: { water: 150 },
    },
  ],
};
const made = (formula: Formula): Recipe => {
  const { recipe, reason } = makeRecipe(formula, { loaves: 2, piece: 900 });
  if (recipe === null) throw new Error(JSON.stringify(reason));
  return recipe;
};

describe('a soaker', () => {
  it('has its water beside the dough’s own: in its weight, in no hydration', () => {
    const exact = amounts(oats, 2020);
    expect(exact.totalFlour).toBeCloseTo(1000, 9);
    expect(exact.fillings).toMatchObject([{ id: 'oats', grams: 100 }]);
    expect(exact.soakers.map(({ id, grams }) => [id, Math.round(grams * 1e6) / 1e6])).toEqual([
      ['oats', 150],
    ]);
    expect(exact.finalWater + exact.levainWater).toBeCloseTo(750, 9);
  });

  it('is a line of its own to weigh, behind what soaks in it, and the sum is the dough', () => {
    const { lines, dough } = made(oats);
    expect(lines.filling.map(({ item, name }) => [item, name])).toEqual([
      ['filling:oats', 'oats'],
      ['soak:oats', 'water for oats'],
    ]);
    const all = [...lines.first, ...lines.second, ...lines.filling];
    expect(all.reduce((sum, { grams }) => sum + grams, 0)).toBeCloseTo(dough, 6);
    // 1800 g of pieces are 177/202 dough, of which 2 % stays in the bowl, and 25/202 oats with their water.
    expect(Math.abs(dough - (1800 * (177 / 0.98 + 25)) / 202)).toBeLessThanOrEqual(2.5);
  });

  it('goes in with its water', () => {
    expect(fillingShare(oats)).toBeCloseTo(25 / 177, 9);
    const { filling } = made(oats).lines;
    expect(goesIn(filling)).toMatchObject([
      { item: 'filling:oats', grams: filling[0]!.grams + filling[1]!.grams },
    ]);
  });

  it('is no line where nothing soaks', () => {
    expect(amounts(shippedFormula('cherry-hazelnut'), 2000).soakers).toEqual([]);
    const { filling } = made(shippedFormula('cherry-hazelnut')).lines;
    expect(goesIn(filling)).toEqual(filling);
  });
});
