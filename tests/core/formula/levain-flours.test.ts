import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amounts } from '../../../src/core/formula/amounts.ts';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { weighFeed } from '../../../src/core/formula/weigh-feed.ts';
import { shippedFormula } from './shipped.ts';

const cherry = shippedFormula('cherry-hazelnut'); // 85 % wheat, 15 % rye
/** As it is, with `rye` % of the levain's flour from the rye. */
const fedRye = (rye: number, pff = cherry.levain.pff): Formula => ({
  ...cherry,
  levain: {
    ...cherry.levain,
    pff,
    flours: [
      { id: 'rye', pct: rye },
      { id: 'wheat', pct: 100 - rye },
    ].filter(({ pct }) => pct > 0),
  },
});
const flour = (formula: Formula, id: string): number => {
  const { flours, totalFlour } = amounts(formula, 2000);
  return flours.find((one) => one.id === id)!.grams / totalFlour;
};

describe('a levain of its own flours', () => {
  it('takes from the bowl what it was fed of each', () => {
    expect(flour(fedRye(50, 0.1), 'rye')).toBeCloseTo(0.15 - 0.05, 12);
    expect(flour(fedRye(50, 0.1), 'wheat')).toBeCloseTo(0.85 - 0.05, 12);
    expect(flour({ ...cherry, levain: { ...cherry.levain, pff: 0.1 } }, 'rye')).toBe(0.15);
  });

  it('is fed of them in their shares', () => {
    const lines = weighFeed(fedRye(40), 200, 30);
    const grams = (item: string) => lines.find((line) => line.item === item)!.grams;
    const all = grams('flour:rye') + grams('flour:wheat');
    expect(Math.abs(grams('flour:rye') - 0.4 * all)).toBeLessThanOrEqual(1);
    const plain = weighFeed(cherry, 200, 30);
    expect(plain.map(({ item }) => item)).toEqual(['seed', 'flour:wheat', 'water']);
  });

  it('leaves all flour as it is, whatever its mix', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 99.9, noNaN: true }),
        fc.double({ min: 0.02, max: 0.14, noNaN: true }),
        (rye, pff) => {
          const { flours, levainFlour, totalFlour } = amounts(fedRye(rye, pff), 2000);
          const bowl = flours.reduce((sum, { grams }) => sum + grams, 0);
          expect(bowl + levainFlour).toBeCloseTo(totalFlour, 6);
        },
      ),
    );
  });

  it('is refused where it wants more of a flour than the dough has, and says how much', () => {
    const { recipe, reason } = makeRecipe(fedRye(100, 0.2), { loaves: 2, piece: 900 });
    expect(recipe).toBeNull();
    // 1800/.98 over 204.9 % → 896.4 g flour; a fifth of it less 15 % is 44.8
    expect(reason).toEqual({
      key: 'levainFlourShort',
      values: { flour: 'whole rye flour', short: 45 },
    });
    const just = makeRecipe(fedRye(100, 0.15), { loaves: 2, piece: 900 });
    expect(just.recipe?.lines.first.map(({ item }) => item)).not.toContain('flour:rye');
  });
});
