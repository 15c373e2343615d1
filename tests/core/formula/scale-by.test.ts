import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { doughPct } from '../../../src/core/formula/dough-pct.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import { scaleBy, type ScaleBy, type Scaled } from '../../../src/core/formula/scale-by.ts';
import { SHIPPED, shippedFormula } from './shipped.ts';

const cherry = shippedFormula('cherry-hazelnut');
const wheat = { ...shippedFormula('lane-wheat'), hydration: 72, salt: 2 };
const scaled = (by: ScaleBy, formula = cherry): Scaled => {
  const answer = scaleBy(formula, by);
  if (answer.scaled === null) throw new Error(JSON.stringify(answer.reason));
  return answer.scaled;
};
const refusedBy = (by: ScaleBy) => scaleBy(cherry, by).reason;
/** Fresh flour of one kind that a recipe takes out of its bag, bowl and feed together. */
const taken = ({ lines }: Recipe, id: string): number =>
  [...lines.feed, ...lines.first]
    .filter(({ item }) => item === `flour:${id}`)
    .reduce((sum, { grams }) => sum + grams, 0);

describe('the size of a bake', () => {
  it('by pieces: 24 × 900 g of 100/72/2 are 22,040.8 g of dough, 12,667.1 of flour', () => {
    const size = scaled({ by: 'pieces', loaves: 24, piece: 900 }, { ...wheat, fillings: [] });
    expect(size.dough).toBeCloseTo(22_040.8, 1);
    expect(size.totalFlour).toBeCloseTo(12_667.1, 1);
  });

  it('by baked loaves: 783 g of bread is a piece of 900 g', () => {
    const size = scaled({ by: 'bread', loaves: 2, bread: 783 });
    expect(size.piece).toBeCloseTo(900, 1);
    expect(scaled({ by: 'bread', loaves: 2, bread: 765, loss: () => 0.15 }).piece).toBeCloseTo(
      900,
      1,
    );
  });

  it('by all flour or all dough: every gram of it, in the nearest number of even loaves', () => {
    const kilo = scaled({ by: 'flour', grams: 1000 });
    expect(kilo.totalFlour).toBeCloseTo(1000, 9);
    // Of 280 g of filling nothing stays in the bowl: 2 % less of it is weighed.
    expect(kilo.dough).toBeCloseTo(doughPct(cherry) * 10 - 280 * 0.02, 9);
    expect(kilo.loaves).toBe(2);
    expect(kilo.piece * 2).toBeCloseTo(doughPct(cherry) * 10 * 0.98, 9);
    const dough = scaled({ by: 'dough', grams: 3000, loaves: 4 });
    expect(dough.loaves).toBe(4);
    expect(dough.piece).toBeCloseTo((3000 * 2008.02) / 2043.4 / 4, 9);
    expect(dough.dough).toBeCloseTo(3000, 9);
  });

  it.each(SHIPPED)('is what the bench weighs: %s', (name) => {
    const formula = shippedFormula(name);
    const { dough, loaves, piece } = scaled({ by: 'flour', grams: 1800 }, formula);
    const { recipe } = makeRecipe(formula, { loaves, piece });
    expect(Math.abs(recipe!.dough - dough)).toBeLessThanOrEqual(2.5);
  });

  it('by the flour that is left: the scarcest decides, and the recipe empties its bag', () => {
    const size = scaled({ by: 'bin', flours: { wheat: 5000, rye: 300 } });
    expect(size.scarcest).toBe('rye');
    expect(size.totalFlour).toBeCloseTo(300 / 0.15, 6);
    const wheaten = scaled({ by: 'bin', flours: { wheat: 1500, rye: 300 } });
    expect(wheaten.scarcest).toBe('wheat');
    const { recipe } = makeRecipe(cherry, wheaten);
    expect(Math.abs(taken(recipe!, 'wheat') - 1500)).toBeLessThanOrEqual(5);
    expect(taken(recipe!, 'rye')).toBeLessThan(300);
  });

  it('a flour that nobody named is there in plenty', () => {
    expect(scaled({ by: 'bin', flours: { rye: 300 } }).scarcest).toBe('rye');
    expect(refusedBy({ by: 'bin', flours: {} })?.key).toBe('amountOutside');
    expect(refusedBy({ by: 'bin', flours: { toString: 1 } })?.key).toBe('amountOutside');
  });

  it('makes no more than any bag holds, levain, starter kept back and all', () => {
    const grams = fc.double({ min: 150, max: 6000, noNaN: true });
    fc.assert(
      fc.property(grams, grams, (bagOfWheat, bagOfRye) => {
        const own = {
          ...cherry,
          levain: {
            ...cherry.levain,
            flours: [
              { id: 'rye', pct: 30 },
              { id: 'wheat', pct: 70 },
            ],
          },
        };
        const answer = scaleBy(own, { by: 'bin', flours: { wheat: bagOfWheat, rye: bagOfRye } });
        if (answer.scaled === null) return;
        const { recipe } = makeRecipe(own, answer.scaled);
        expect(taken(recipe!, 'wheat')).toBeLessThanOrEqual(bagOfWheat + 6);
        expect(taken(recipe!, 'rye')).toBeLessThanOrEqual(bagOfRye + 6);
        const empty = answer.scaled.scarcest === 'rye' ? bagOfRye : bagOfWheat;
        expect(taken(recipe!, answer.scaled.scarcest!)).toBeGreaterThan(empty - 6);
      }),
      { numRuns: 200 },
    );
  });

  it.each<[ScaleBy, string]>([
    [{ by: 'pieces', loaves: 0, piece: 900 }, 'loavesOutside'],
    [{ by: 'pieces', loaves: 2, piece: 90 }, 'pieceOutside'],
    [{ by: 'bread', loaves: 2, bread: 5000 }, 'breadOutside'],
    [{ by: 'bread', loaves: 2, bread: Number.NaN }, 'breadOutside'],
    [{ by: 'dough', grams: 100 }, 'pieceOutside'],
    [{ by: 'dough', grams: 2000, loaves: 0 }, 'loavesOutside'],
    [{ by: 'flour', grams: 0 }, 'amountOutside'],
    [{ by: 'flour', grams: Infinity }, 'amountOutside'],
    [{ by: 'flour', grams: Number.NaN }, 'amountOutside'],
    [{ by: 'bin', flours: { wheat: 5 } }, 'binEmpty'],
  ])('refuses %j: %s', (by, key) => {
    expect(refusedBy(by)?.key).toBe(key);
  });

  it('scaled twice is scaled once', () => {
    fc.assert(
      fc.property(fc.double({ min: 300, max: 20_000, noNaN: true }), (grams) => {
        const once = scaled({ by: 'flour', grams });
        const twice = scaled({ by: 'dough', grams: once.dough });
        expect(twice.loaves).toBe(once.loaves);
        expect(twice.piece).toBeCloseTo(once.piece, 6);
        const third = scaled({ by: 'pieces', loaves: once.loaves, piece: once.piece });
        expect(third.totalFlour).toBeCloseTo(grams, 6);
      }),
    );
  });
});
