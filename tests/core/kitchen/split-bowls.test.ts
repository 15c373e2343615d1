import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import type { WeighLine } from '../../../src/core/formula/recipe.ts';
import { bowlsFor } from '../../../src/core/kitchen/bowls.ts';
import {
  bowlClocks,
  doughIn,
  recipeBowls,
  sharesOf,
  splitBowls,
} from '../../../src/core/kitchen/split-bowls.ts';
import { EQUIPMENT } from '../../../src/core/kitchen/equipment.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { shippedFormula } from '../formula/shipped.ts';

const sum = (of: readonly number[]): number => of.reduce((all, n) => all + n, 0);
const weight = ({ lines }: { readonly lines: readonly WeighLine[] }): number =>
  sum(lines.map(({ grams }) => grams));
const linesOf = (loaves: number): readonly WeighLine[] => {
  const { recipe } = makeRecipe(shippedFormula('lane-wheat'), { loaves, piece: 900 });
  return [...recipe!.lines.first, ...recipe!.lines.second];
};

describe('a dough in several bowls', () => {
  it('of 7.3 kg is three of them, alike to a step of the scale, six minutes apart', () => {
    const lines = linesOf(8);
    const count = bowlsFor(weight({ lines }), { kilos: 3, litres: null, count: null });
    expect(count).toBe(3);
    const bowls = splitBowls(lines, count);
    expect(bowls.map(({ later }) => later)).toEqual([0, 6, 12]);
    const all = bowls.map(weight);
    expect(Math.max(...all) - Math.min(...all)).toBeLessThanOrEqual(5);
    expect(bowlClocks(1000, bowls)).toEqual([1000, 1000 + 6 * MINUTE, 1000 + 12 * MINUTE]);
  });

  it('of 3 kg stays in one, and is what it was', () => {
    const lines = linesOf(3);
    expect(splitBowls(lines, 1)).toEqual([{ lines, later: 0 }]);
  });

  it('has of every line what it was, and no bowl more than a step over another', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 36 }), fc.integer({ min: 1, max: 9 }), (loaves, n) => {
        const lines = linesOf(loaves);
        const bowls = splitBowls(lines, n);
        expect(bowls).toHaveLength(n);
        for (const [l, line] of lines.entries()) {
          const own = bowls.map((bowl) => bowl.lines[l]!);
          expect(sum(own.map(({ grams }) => grams))).toBeCloseTo(line.grams, 6);
          const grams = own.map((one) => one.grams);
          expect(Math.max(...grams) - Math.min(...grams)).toBeLessThanOrEqual(line.division + 1e-9);
          for (const one of own) expect(one).toMatchObject({ item: line.item, name: line.name });
        }
        const all = bowls.map(weight);
        const coarsest = Math.max(...lines.map(({ division }) => division));
        expect(Math.max(...all) - Math.min(...all)).toBeLessThanOrEqual(coarsest + 1e-6);
      }),
      { numRuns: 200 },
    );
  });

  it('is the whole recipe but the feed, line for line, in as many bowls as the kitchen’s take', () => {
    const { recipe } = makeRecipe(shippedFormula('seed-oat'), { loaves: 6, piece: 900 });
    const { lines, dough } = recipe!;
    const bowls = recipeBowls(recipe!, EQUIPMENT);
    expect(bowls).toHaveLength(2);
    expect(sum(bowls.map(doughIn))).toBeCloseTo(dough, 6);
    for (const { item, grams } of [...lines.first, ...lines.second, ...lines.filling])
      expect(sum(sharesOf(bowls, item)), item).toBeCloseTo(grams, 6);
    expect(sharesOf(bowls, 'starter')).toEqual([0, 0]);
    const small = { bowls: { count: 9, kilos: 3, litres: 3 } };
    expect(recipeBowls(recipe!, small)).toHaveLength(4);
    expect(recipeBowls(recipe!, { bowls: { ...small.bowls, litres: 12 } })).toHaveLength(2);
  });
});
