import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { doughToMix } from '../../../src/core/formula/dough-to-mix.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { mixedAmounts } from '../../../src/core/formula/mixed-amounts.ts';
import { linesOf, percentFor, withLine, type LineKey } from '../../../src/screens/book/lines.ts';
import { bread } from '../day/breads.ts';

const CHERRY = bread('cherry-hazelnut');
const BOWL: Formula = { ...CHERRY, convention: 'bowl' };
const DOUGH = doughToMix(2, 900);
const lineOf = (formula: Formula, key: LineKey) =>
  linesOf(formula, DOUGH).find((one) => one.key === key)!;
const changed = (formula: Formula, key: LineKey, percent: number): Formula => {
  const { formula: next } = withLine(formula, key, percent);
  if (next === null) throw new Error(`${key} cannot be ${percent} %.`);
  return next;
};
const KEYS = linesOf(CHERRY, DOUGH).map(({ key }) => key);

describe('lines of a formula', () => {
  it('count of all flour, or of the flour in the bowl, as the formula says', () => {
    expect(KEYS).toEqual([
      'flour:wheat',
      'flour:rye',
      'water',
      'secondWater',
      'levain',
      'levainWater',
      'salt',
      'filling:cherry',
      'filling:hazelnut',
    ]);
    const percents = (formula: Formula) =>
      linesOf(formula, DOUGH).map(({ percent }) => Number(percent.toFixed(2)));
    // 9 % of the flour is in the levain: 91 parts in the bowl. 75 − 9 = 66 of water, 18 of levain.
    expect(percents(CHERRY)).toEqual([85, 15, 75, 8, 18, 100, 1.9, 16, 12]);
    expect(percents(BOWL)).toEqual([83.52, 16.48, 72.53, 8, 19.78, 100, 2.09, 17.58, 13.19]);
  });

  it('are one dough in either convention', () => {
    const parts = ['salt', 'levain', 'filling:cherry'] as const;
    for (const key of parts) {
      expect(lineOf(BOWL, key).grams).toBeCloseTo(lineOf(CHERRY, key).grams!, 9);
    }
    const inBowl = KEYS.filter((key) => key !== 'secondWater' && key !== 'levainWater');
    const sum = inBowl.reduce((all, key) => all + lineOf(BOWL, key).grams!, 0);
    expect(sum).toBeCloseTo(DOUGH, 6);
  });

  it('weigh what the bench weighs', () => {
    const { recipe } = makeRecipe(CHERRY, { loaves: 2, piece: 900 });
    const { lines } = recipe!;
    const off = mixedAmounts(CHERRY, 2, 900).dough;
    for (const { item, grams, division } of [...lines.second, ...lines.filling]) {
      const shown = linesOf(CHERRY, off).find(({ key }) => key === item)!.grams!;
      expect(Math.abs(shown - grams), item).toBeLessThanOrEqual(division);
    }
  });

  it.each([CHERRY, BOWL])('take the percent that was keyed, each in turn', (formula) => {
    for (const key of KEYS) {
      const { percent } = lineOf(formula, key);
      const next = changed(formula, key, percent * 1.1);
      expect(lineOf(next, key).percent, key).toBeCloseTo(percent * 1.1, 9);
      expect(next.flours.reduce((sum, { pct }) => sum + pct, 0)).toBeCloseTo(100, 9);
      expect(next).toMatchObject({ id: formula.id, version: formula.version });
    }
  });

  it('leave the others as they were counted: salt in the bowl moves nothing else there', () => {
    const next = changed(BOWL, 'salt', 1.8);
    for (const key of KEYS.filter((one) => one !== 'salt')) {
      expect(lineOf(next, key).percent, key).toBeCloseTo(lineOf(BOWL, key).percent, 9);
    }
  });

  it('hold all flour, all water and the levain’s part of it where the levain is made wetter', () => {
    const next = changed(CHERRY, 'levainWater', 60);
    expect(next).toMatchObject({ hydration: 75, levain: { pff: 0.09, hydration: 0.6 } });
    expect(next.levain.feed).toMatchObject({ flour: 5, water: 3 });
    const soaked = withLine(
      { ...CHERRY, hydration: 30, levain: { ...CHERRY.levain, pff: 0.2 } },
      'levainWater',
      200,
    );
    expect(soaked).toMatchObject({ formula: null, reason: { key: 'levainTooWet' } });
  });

  it('have fillings counted of the dough where it is so asked, in either convention as heavy', () => {
    for (const formula of [CHERRY, BOWL]) {
      const ofDough: Formula = { ...formula, fillingsOf: 'dough' };
      const [flour, dough] = [formula, ofDough].map((one) => lineOf(one, 'filling:cherry'));
      // 16 of flour in 176.9 of dough before the fillings: 9.04 %.
      expect(dough!.percent).toBeCloseTo((16 / 176.9) * 100, 9);
      expect(dough!.grams).toBeCloseTo(flour!.grams!, 9);
      expect([flour!.ofDough, dough!.ofDough]).toEqual([false, true]);
      expect(lineOf(ofDough, 'salt').ofDough).toBe(false);
    }
  });

  it('find the percent of what was put on the scale, the dough as heavy as before', () => {
    for (const formula of [CHERRY, BOWL]) {
      const percent = percentFor(formula, 'filling:cherry', 200, DOUGH)!;
      expect(
        lineOf(changed(formula, 'filling:cherry', percent), 'filling:cherry').grams,
      ).toBeCloseTo(200, 3);
    }
    expect(percentFor(CHERRY, 'salt', 5_000, DOUGH)).toBeNull();
    expect(percentFor(CHERRY, 'levainWater', 50, DOUGH)).toBeNull();
  });

  it('come back to the same grams by way of the percent, whatever line and bread', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('cherry-hazelnut', 'olive-seed', 'barley-tin', 'harbour-rye'),
        fc.constantFrom('whole' as const, 'bowl' as const),
        fc.constantFrom<LineKey>('salt', 'levain', 'secondWater'),
        fc.double({ min: 0.5, max: 1.5, noNaN: true }),
        (name, convention, key, times) => {
          const formula = { ...bread(name), convention };
          const { grams } = lineOf(formula, key);
          if (grams === null || grams === 0) return;
          const percent = percentFor(formula, key, grams * times, DOUGH)!;
          expect(lineOf(changed(formula, key, percent), key).grams).toBeCloseTo(grams * times, 3);
        },
      ),
      { numRuns: 60 },
    );
  });
});
