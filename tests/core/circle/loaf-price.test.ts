import { describe, expect, it } from 'vitest';
import { CIRCLE, type Circle } from '../../../src/core/circle/circle.ts';
import { costOf } from '../../../src/core/circle/cost.ts';
import { loafPrice } from '../../../src/core/circle/loaf-price.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import type { Formula } from '../../../src/core/formula/formula.ts';

const FILES = import.meta.glob<Formula>('../../../assets/formulas/lane-wheat.json', {
  eager: true,
  import: 'default',
});
const WHEAT = Object.values(FILES)[0]!;
const { recipe } = makeRecipe(WHEAT, { loaves: 4, piece: WHEAT.piece });
const things = costOf(recipe!, [], { besides: null }).lines.map(({ id, name }) => ({
  ...{ id, name, counted: null, madeOf: null },
  pack: { grams: 1000, cost: 1.37, usable: 1 },
}));
const circle = (ways: Partial<Circle['ways']>, ingredients = things) => ({
  ingredients,
  ways: { ...CIRCLE.ways, ...ways },
});
const AS_PIECE = { loaves: 4, grams: null };

describe('what a loaf is to cost whoever has it', () => {
  it('is the baker’s number times its cost, counted in the currency’s own digits', () => {
    const { loaf } = costOf(recipe!, things, { besides: 0.5 });
    const price = (currency: string) =>
      loafPrice(WHEAT, AS_PIECE, circle({ times: 2, besides: 0.5, currency }), null)!;
    expect(price('EUR')).toBe(Number((2 * loaf).toFixed(2)));
    expect(price('JPY')).toBe(Math.round(2 * loaf));
  });

  it('is the less the lighter the loaf', () => {
    const of = (grams: number) =>
      loafPrice(WHEAT, { loaves: 4, grams }, circle({ times: 3 }), null)!;
    expect(of(400)).toBeLessThan(of(800));
    expect(of(400)).toBeGreaterThan(0);
  });

  it('is not said without a number of the baker’s, with a price missing, or of what cannot be weighed', () => {
    expect(loafPrice(WHEAT, AS_PIECE, circle({}), null)).toBeNull();
    expect(loafPrice(WHEAT, AS_PIECE, circle({ times: 2 }, things.slice(1)), null)).toBeNull();
    expect(loafPrice(WHEAT, { loaves: 99, grams: null }, circle({ times: 2 }), null)).toBeNull();
  });
});
