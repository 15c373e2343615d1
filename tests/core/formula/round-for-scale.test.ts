import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import {
  isRough,
  roundForScale,
  scaleDivision,
} from '../../../src/core/formula/round-for-scale.ts';
import { SCALE_STEPS } from '../../../src/core/kitchen/equipment.ts';
import { SHIPPED, shippedFormula } from './shipped.ts';

const sum = (grams: readonly number[]) => grams.reduce((a, b) => a + b, 0);

describe('the kitchen’s scale', () => {
  it('is never asked for finer steps than it shows, nor for more than the usual', () => {
    expect(scaleDivision(9, 'salt')).toBe(0.1);
    expect(scaleDivision(9, 'salt', 1)).toBe(1);
    expect(scaleDivision(400, 'other', 0.1)).toBe(1);
    expect(scaleDivision(400, 'other', 2)).toBe(2);
    expect(scaleDivision(1400, 'other', 2)).toBe(5);
  });

  it('gives salt under half a step one step, and takes it off the flour', () => {
    const lines = [
      { grams: 500, division: 5 },
      { grams: 2, division: 5 },
      { grams: 2.4, division: 5 },
    ];
    expect(roundForScale(lines, 504.4, 'one')).toEqual([495, 5, 5]);
  });

  it('keeps nothing at nothing', () => {
    expect(roundForScale([{ grams: 0, division: 5 }], 0, 'one')).toEqual([0]);
  });

  it('calls a line rough whose half step is over a twentieth of it', () => {
    expect(isRough({ grams: 8, division: 1 })).toBe(true);
    expect(isRough({ grams: 10, division: 1 })).toBe(false);
    expect(isRough({ grams: 2, division: 0.1 })).toBe(false);
  });

  it('loses no line, and the sum stays within half the coarsest step, whatever the scale', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SCALE_STEPS),
        fc.array(fc.double({ min: 0.05, max: 900, noNaN: true }), { minLength: 1, maxLength: 8 }),
        fc.double({ min: 100, max: 9000, noNaN: true }),
        (scale, small, flour) => {
          const lines = [...small, flour].map((grams) => ({
            grams,
            division: scaleDivision(grams, grams < 20 ? 'seed' : 'other', scale),
          }));
          const total = sum(lines.map(({ grams }) => grams));
          const rounded = roundForScale(lines, total, 'one');
          const coarsest = Math.max(...lines.map(({ division }) => division));
          expect(Math.abs(sum(rounded) - total)).toBeLessThanOrEqual(coarsest / 2 + 1e-6);
          rounded.forEach((grams, i) => {
            const { division } = lines[i]!;
            expect(grams).toBeGreaterThan(0);
            const steps = grams / division;
            expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
          });
        },
      ),
      { numRuns: 2000 },
    );
  });

  it.each(SCALE_STEPS)('weighs every shipped formula in steps of %s g', (scale) => {
    for (const name of SHIPPED) {
      const formula = shippedFormula(name);
      const { recipe } = makeRecipe(formula, { loaves: 1, piece: formula.piece, scale });
      expect(recipe, formula.id).not.toBeNull();
      for (const { item, grams, division } of Object.values(recipe!.lines).flat()) {
        expect(grams, `${formula.id} ${item}`).toBeGreaterThan(0);
        expect(division, `${formula.id} ${item}`).toBeGreaterThanOrEqual(scale);
      }
    }
  });
});
