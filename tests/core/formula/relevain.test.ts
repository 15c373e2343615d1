import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amounts } from '../../../src/core/formula/amounts.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { relevain } from '../../../src/core/formula/relevain.ts';
import { shippedFormula } from './shipped.ts';

const wheat = { ...shippedFormula('lane-wheat'), hydration: 72, salt: 2, secondWater: 0 };
const tenth = { ...wheat, levain: { ...wheat.levain, pff: 0.1, hydration: 1 } };

describe('another levain hydration', () => {
  it('makes 20 % of levain 15 and 62 % of water 67, where 100 % becomes 50', () => {
    const { formula, ...sheet } = relevain(tenth, 0.5);
    expect(sheet).toMatchObject({
      levain: { before: expect.closeTo(20, 9), now: expect.closeTo(15, 9) },
      finalWater: { before: expect.closeTo(62, 9), now: expect.closeTo(67, 9) },
    });
    const { feed } = formula!.levain;
    expect(feed.water / feed.flour).toBe(0.5);
    expect(makeRecipe(formula!, { loaves: 2, piece: 900 }).recipe!.warnings).toEqual([]);
  });

  it('leaves flour, water and the prefermented share of the dough as they were', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.4, max: 2, noNaN: true }), (hydration) => {
        const { formula, levain } = relevain(tenth, hydration) as ReturnType<typeof relevain> & {
          levain: { now: number };
        };
        const [was, is] = [amounts(tenth, 2000), amounts(formula!, 2000)];
        expect(is.totalFlour).toBeCloseTo(was.totalFlour, 9);
        expect(is.levainFlour).toBeCloseTo(was.levainFlour, 9);
        expect(is.finalWater + is.levainWater).toBeCloseTo(was.finalWater + was.levainWater, 9);
        expect(is.levain).toBeCloseTo((levain.now / 100) * is.totalFlour, 9);
        const back = relevain(formula!, 1).formula!;
        expect(amounts(back, 2000).finalWater).toBeCloseTo(was.finalWater, 6);
      }),
    );
  });

  it('is refused where the levain brings more water than the bowl has, and says how much', () => {
    const much = { ...tenth, hydration: 60, levain: { ...tenth.levain, pff: 0.4 } };
    const { formula, reason } = relevain(much, 1.6);
    expect(formula).toBeNull();
    expect(reason).toEqual({ key: 'levainTooWet', values: { short: expect.closeTo(4, 9) } });
    expect(relevain(much, 1.5).formula).not.toBeNull();
    const later = { ...much, secondWater: 0.1 };
    expect(relevain(later, 1.5).reason?.values['short']).toBeCloseTo(6, 9);
  });

  it('is refused where no levain is so', () => {
    expect(relevain(tenth, 3).reason).toMatchObject({
      key: 'formulaUnreadable',
      values: { path: 'levain.hydration' },
    });
    expect(relevain(tenth, Number.NaN).formula).toBeNull();
  });
});
