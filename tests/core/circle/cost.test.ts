import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { costOf, timesCost, usableCost } from '../../../src/core/circle/cost.ts';
import { usesOf } from '../../../src/core/circle/uses.ts';
import { ingredient, recipeOf } from './support.ts';

const recipe = recipeOf('cherry-hazelnut', 4);
const price = fc.double({ min: 0, max: 100, noNaN: true });
const share = fc.double({ min: 0.01, max: 1, noNaN: true });

describe('what a loaf costs', () => {
  it('is what its lines cost, and what it costs besides', () => {
    const priced = usesOf(recipe).map(({ name }) =>
      ingredient(name, { pack: { grams: 1000, cost: 5, usable: 1 } }),
    );
    const cost = costOf(recipe, priced, { besides: 0.3 });
    const grams = usesOf(recipe).reduce((sum, one) => sum + one.grams, 0);
    expect(cost.known).toBeCloseTo(grams * 0.005, 9);
    expect(cost.loaf).toBeCloseTo((grams * 0.005) / 4 + 0.3, 9);
    expect(cost.missing).toEqual([]);
  });

  it('is at least so much where a price is missing, which is named', () => {
    const cost = costOf(
      recipe,
      [
        ingredient('salt', { pack: { grams: 500, cost: 1, usable: 1 } }),
        ingredient('dried cherries'),
      ],
      { besides: null },
    );
    expect(cost.missing).toEqual([
      'strong wheat flour',
      'whole rye flour',
      'dried cherries',
      'toasted hazelnuts',
    ]);
    const salt = usesOf(recipe).find(({ id }) => id === 'salt')!;
    expect(cost.loaf).toBeCloseTo((salt.grams * 0.002) / 4, 12);
  });

  it('counts what costs nothing as known', () => {
    const free = usesOf(recipe).map(({ name }) =>
      ingredient(name, { pack: { grams: 1, cost: 0, usable: 1 } }),
    );
    expect(costOf(recipe, free, { besides: null })).toMatchObject({ loaf: 0, missing: [] });
  });

  it('never falls when a price rises or less can be used', () => {
    fc.assert(
      fc.property(price, price, share, share, (a, b, s, t) => {
        expect(usableCost(Math.max(a, b), Math.min(s, t))).toBeGreaterThanOrEqual(
          usableCost(Math.min(a, b), Math.max(s, t)),
        );
        expect(usableCost(a, 1)).toBe(a);
      }),
    );
  });

  it('is the sum of its lines, and twice of it all is twice the cost', () => {
    fc.assert(
      fc.property(fc.array(price, { minLength: 5, maxLength: 5 }), share, (prices, usable) => {
        const at = (times: number) =>
          usesOf(recipe).map(({ name }, i) =>
            ingredient(name, { pack: { grams: 750, cost: times * prices[i]!, usable } }),
          );
        const once = costOf(recipe, at(1), { besides: null });
        const sum = once.lines.reduce((all, line) => all + line.cost!, 0);
        expect(once.loaf * recipe.loaves).toBeCloseTo(sum, 6);
        expect(costOf(recipe, at(2), { besides: null }).loaf).toBeCloseTo(2 * once.loaf, 6);
      }),
    );
  });

  it('has a price only by the baker’s own number', () => {
    expect(timesCost(1.12, null)).toBeNull();
    expect(timesCost(1.12, 3)).toBeCloseTo(3.36, 12);
  });
});
