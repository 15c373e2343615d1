import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellShares } from '../../../src/core/formula/cell-shares.ts';
import { LOAVES, makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { sheetRows } from '../../../src/core/formula/sheet-rows.ts';
import { shippedFormula } from './shipped.ts';

const sum = (of: readonly number[]): number => of.reduce((all, n) => all + n, 0);
const loaves = fc.integer({ min: LOAVES.least, max: LOAVES.most });

describe('the sheet’s rows', () => {
  it.each([
    [1, [1]],
    [2, [2]],
    [4, [2, 2]],
    [5, [3, 2]],
    [6, [3, 3]],
    [7, [4, 3]],
    [12, [4, 4, 4]],
    [24, [6, 6, 6, 6]],
    [36, [6, 6, 6, 6, 6, 6]],
  ])('of %d loaves are %j', (n, rows) => {
    expect(sheetRows(n)).toEqual(rows);
  });

  it('hold one cell a loaf, the fuller first, of a fair shape', () => {
    fc.assert(
      fc.property(loaves, (n) => {
        const rows = sheetRows(n);
        expect(sum(rows)).toBe(n);
        expect(rows.at(0)! - rows.at(-1)!).toBeLessThanOrEqual(1);
        expect(rows).toEqual([...rows].sort((a, b) => b - a));
        for (const count of rows) {
          // On a sheet 3 wide and 2 deep, whose rows are as deep as they are full.
          const [width, depth] = [3 / count, (2 * count) / n];
          expect(Math.max(width / depth, depth / width), `${n}: ${rows}`).toBeLessThan(2.7);
        }
      }),
    );
  });
});

describe('what of a filling goes on a cell', () => {
  it('comes to the weighed filling, and no cell has a step more than another', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 20_000 }),
        fc.constantFrom(1, 5),
        loaves,
        (steps, division, n) => {
          const grams = steps * division;
          const shares = cellShares({ grams, division }, n);
          expect(shares).toHaveLength(n);
          expect(sum(shares)).toBe(grams);
          expect(Math.max(...shares) - Math.min(...shares)).toBeLessThanOrEqual(1);
          for (const share of shares) expect(Number.isInteger(share * 2)).toBe(true);
        },
      ),
      { numRuns: 500 },
    );
  });

  it('is whole grams, or halves where a gram would be a tenth of it', () => {
    expect(cellShares({ grams: 100, division: 1 }, 3)).toEqual([34, 33, 33]);
    expect(cellShares({ grams: 20, division: 1 }, 3)).toEqual([7, 6.5, 6.5]);
    expect(cellShares({ grams: 48.5, division: 0.1 }, 2)).toEqual([24.5, 24]);
  });

  it('is reckoned from what a shipped formula has weighed', () => {
    for (const n of [1, 2, 24, 36]) {
      const { recipe } = makeRecipe(shippedFormula('cherry-hazelnut'), { loaves: n, piece: 900 });
      for (const line of recipe!.lines.filling) {
        expect(sum(cellShares(line, n)), `${n} ${line.name}`).toBe(line.grams);
      }
    }
  });
});
