import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amounts } from '../../../src/core/formula/amounts.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { percentOf } from '../../../src/core/formula/live-percent.ts';
import { roundForScale } from '../../../src/core/formula/round-for-scale.ts';
import { celsiusOf, fahrenheitOf, gramsOfOunces, ouncesOf } from '../../../src/core/units.ts';
import { SHIPPED, shippedFormula } from './shipped.ts';

const anyBake = [
  fc.constantFrom(...SHIPPED),
  fc.integer({ min: 1, max: 36 }),
  fc.double({ min: 200, max: 2400, noNaN: true }),
] as const;
const madeOf = (name: (typeof SHIPPED)[number], loaves: number, piece: number) =>
  makeRecipe(shippedFormula(name), { loaves, piece }).recipe!;

describe('laws of the sheet', () => {
  it('grams to percent to grams is what was on the scale', () => {
    fc.assert(
      fc.property(...anyBake, (name, loaves, piece) => {
        const { lines, dough } = madeOf(name, loaves, piece);
        const { totalFlour } = amounts(shippedFormula(name), dough);
        for (const { grams, division } of [...lines.first, ...lines.second, ...lines.filling]) {
          const again = (percentOf(grams, totalFlour) / 100) * totalFlour;
          expect(Math.round(again / division) * division).toBeCloseTo(grams, 6);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('exact percents to exact grams and back are as they were', () => {
    fc.assert(
      fc.property(...anyBake, (name, loaves, piece) => {
        const formula = shippedFormula(name);
        const exact = amounts(formula, loaves * piece);
        const pct = (grams: number): number => percentOf(grams, exact.totalFlour);
        expect(pct(exact.salt)).toBeCloseTo(formula.salt, 9);
        expect(pct(exact.finalWater + exact.levainWater)).toBeCloseTo(formula.hydration, 9);
        expect(pct(exact.levainFlour)).toBeCloseTo(formula.levain.pff * 100, 9);
        for (const [i, { grams }] of exact.fillings.entries()) {
          expect(pct(grams)).toBeCloseTo(formula.fillings[i]!.pct, 9);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('rounded twice is rounded once', () => {
    fc.assert(
      fc.property(...anyBake, (name, loaves, piece) => {
        const { lines, dough } = madeOf(name, loaves, piece);
        const all = [...lines.first, ...lines.second, ...lines.filling];
        expect(roundForScale(all, dough, 'one')).toEqual(all.map(({ grams }) => grams));
      }),
      { numRuns: 200 },
    );
  });

  it('the lines are the dough, to the tenth of a gram', () => {
    fc.assert(
      fc.property(...anyBake, (name, loaves, piece) => {
        const { lines, dough } = madeOf(name, loaves, piece);
        const all = [...lines.first, ...lines.second, ...lines.filling];
        expect(all.reduce((sum, { grams }) => sum + grams, 0)).toBeCloseTo(dough, 6);
      }),
      { numRuns: 200 },
    );
  });

  it('twice the dough is twice every line, before the scale', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SHIPPED),
        fc.double({ min: 1, max: 1e5, noNaN: true }),
        (name, dough) => {
          const [one, two] = [dough, 2 * dough].map((all) => amounts(shippedFormula(name), all));
          expect(two!.finalWater).toBeCloseTo(2 * one!.finalWater, 6);
          expect(two!.levain).toBeCloseTo(2 * one!.levain, 6);
          for (const [i, { grams }] of one!.flours.entries()) {
            expect(two!.flours[i]!.grams).toBeCloseTo(2 * grams, 6);
          }
        },
      ),
    );
  });
});

describe('laws of units', () => {
  it('grams to ounces and back, °C to °F and back, are as they were', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), (n) => {
        expect(gramsOfOunces(ouncesOf(n))).toBeCloseTo(n, 6);
        expect(ouncesOf(gramsOfOunces(n))).toBeCloseTo(n, 6);
        expect(celsiusOf(fahrenheitOf(n))).toBeCloseTo(n, 6);
        expect(fahrenheitOf(celsiusOf(n))).toBeCloseTo(n, 6);
      }),
    );
  });
});
