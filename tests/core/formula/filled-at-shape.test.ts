import { expect, it } from 'vitest';
import {
  dividedPiece,
  fillingEach,
  fillsAtShape,
} from '../../../src/core/formula/filled-at-shape.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { withFillingIn } from '../../../src/core/formula/process-changes.ts';
import { shippedFormula } from './shipped.ts';

const recipeOf = (formula = shippedFormula('seed-oat')) =>
  makeRecipe(formula, { loaves: 4, piece: formula.piece }).recipe!;
const shaped = () => {
  const formula = shippedFormula('seed-oat');
  return recipeOf({ ...formula, process: withFillingIn(formula, 'shape').process! });
};

it('pieces weigh less by the filling that goes in at the shaping, and a loaf is whole again', () => {
  const recipe = shaped();
  expect([fillsAtShape(recipeOf()), fillsAtShape(recipe)]).toEqual([false, true]);
  expect(dividedPiece(recipeOf())).toBe(900);
  const each = fillingEach(recipe).reduce((sum, { grams }) => sum + grams, 0);
  // Of the weighed dough 2 % stay on hands and board, of which the filling has its share.
  expect(dividedPiece(recipe) + each * 0.98).toBeGreaterThan(898);
  expect(dividedPiece(recipe) + each * 0.98).toBeLessThan(902);
});

it('the oats go in with the water they soaked in', () => {
  const oats = fillingEach(shaped()).find(({ item }) => item === 'filling:oats')!;
  const [dry, water] = ['filling:oats', 'soak:oats'].map(
    (item) => shaped().lines.filling.find((line) => line.item === item)!.grams,
  );
  expect(oats.grams).toBe(Math.round((dry! + water!) / 4));
});

it('a spooned dough has it all in before it is weighed into its tins', () => {
  const rye = shippedFormula('harbour-rye');
  const filled = recipeOf({ ...rye, fillings: shippedFormula('cherry-hazelnut').fillings });
  expect(fillsAtShape(filled)).toBe(true);
  expect(dividedPiece(filled)).toBe(1000);
});
