import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amounts } from '../../../src/core/formula/amounts.ts';
import type { Formula } from '../../../src/core/formula/formula.ts';
import {
  percentOf,
  withCounted,
  withGrams,
  withPercent,
  type Changed,
  type PercentLine,
} from '../../../src/core/formula/live-percent.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { SHIPPED, shippedFormula } from './shipped.ts';

const cherry = shippedFormula('cherry-hazelnut');
const changed = ({ formula, reason }: Changed): Formula => {
  if (formula === null) throw new Error(JSON.stringify(reason));
  return formula;
};

describe('a formula changed by one line', () => {
  it('has it in percent of all flour', () => {
    expect(changed(withPercent(cherry, 'water', 78)).hydration).toBe(78);
    expect(changed(withPercent(cherry, 'salt', 2.1)).salt).toBe(2.1);
    expect(changed(withPercent(cherry, 'levain', 20)).levain.pff).toBeCloseTo(0.1, 12);
    const [fruit, nut] = changed(withPercent(cherry, 'filling:cherry', 20)).fillings;
    expect([fruit!.pct, nut!.pct]).toEqual([20, 12]);
  });

  it('takes a flour’s change from the others, each by its part', () => {
    const three: Formula = {
      ...cherry,
      flours: [
        ...cherry.flours.map((flour) => (flour.id === 'wheat' ? { ...flour, pct: 60 } : flour)),
        { id: 'spelt', name: 'spelt', grain: 'spelt', pct: 25 },
      ],
    };
    const pcts = changed(withPercent(three, 'flour:rye', 32)).flours.map(({ pct }) => pct);
    expect(pcts[0]).toBeCloseTo(48, 9);
    expect(pcts[1]).toBe(32);
    expect(pcts[2]).toBeCloseTo(20, 9);
  });

  it('goes by what was put on the scale: 15 g of 600 g is 2.5 %, not 3', () => {
    expect(changed(withGrams(cherry, 'salt', 15, 600)).salt).toBe(2.5);
    expect(percentOf(15, 600)).toBe(2.5);
  });

  it('takes a filling as its baker counts it', () => {
    const ofDough: Formula = { ...cherry, hydration: 75, salt: 2, fillingsOf: 'dough' };
    expect(changed(withCounted(ofDough, 'cherry', 20)).fillings[0]!.pct).toBeCloseTo(35.4, 9);
    expect(changed(withCounted(cherry, 'cherry', 20)).fillings[0]!.pct).toBe(20);
  });

  it.each<[PercentLine, number, string]>([
    ['salt', 11, 'salt'],
    ['water', Number.NaN, 'hydration'],
    ['levain', 400, 'levain.pff'],
    ['flour:rye', 100, 'flours[0].pct'],
    ['filling:cherry', 0, 'fillings[0].pct'],
  ])('is refused for %s at %d, by name', (line, pct, path) => {
    const { formula, reason } = withPercent(cherry, line, pct);
    expect(formula).toBeNull();
    expect(reason).toMatchObject({ key: 'formulaUnreadable', values: { path } });
  });

  it.each<PercentLine>(['filling:fig', 'flour:oat'])(
    'is refused for %s, which it has not',
    (line) => {
      expect(withPercent(cherry, line, 5).reason).toEqual({ key: 'lineUnknown', values: { line } });
    },
  );

  it('of grams off the scale gives those grams again, to their step', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SHIPPED),
        fc.integer({ min: 1, max: 36 }),
        fc.double({ min: 200, max: 2000, noNaN: true }),
        (name, loaves, piece) => {
          const formula = shippedFormula(name);
          const { recipe } = makeRecipe(formula, { loaves, piece });
          const { totalFlour } = amounts(formula, recipe!.dough);
          for (const line of recipe!.lines.filling) {
            if (!line.item.startsWith('filling:')) continue; // a soaker's water goes by its filling
            const id = line.item.replace('filling:', '');
            const again = changed(withGrams(formula, `filling:${id}`, line.grams, totalFlour));
            const pct = again.fillings.find((one) => one.id === id)!.pct;
            const grams = (pct / 100) * totalFlour;
            expect(Math.abs(grams - line.grams)).toBeLessThan(line.division / 2);
          }
          const salt = recipe!.lines.second.find(({ item }) => item === 'salt')!;
          const salted = changed(withGrams(formula, 'salt', salt.grams, totalFlour)).salt;
          expect((salted / 100) * totalFlour).toBeCloseTo(salt.grams, 6);
        },
      ),
      { numRuns: 200 },
    );
  });
});
