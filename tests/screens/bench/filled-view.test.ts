import { expect, it } from 'vitest';
import type { Filling, Formula } from '../../../src/core/formula/formula.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { withFillingIn } from '../../../src/core/formula/process-changes.ts';
import { benchView, type BenchView } from '../../../src/screens/bench/view.ts';
import { filledView } from '../../../src/screens/bench/filled-view.ts';
import { focusOn } from '../../../src/screens/focus.ts';
import { shippedFormula } from '../../core/formula/shipped.ts';
import { Hand } from '../../machines/support/hand.ts';

const UNITS = { heat: 'C', weight: 'g' } as const;

const viewAt = (formula: Formula, stage: string): BenchView => {
  const { recipe } = makeRecipe(formula, { loaves: 2, piece: formula.piece });
  const hand = new Hand();
  expect(hand.start('a', stage, ['a1', 'a2'], recipe!)).toBe(true);
  const focus = focusOn(hand.kitchen, 'a')!;
  return filledView(benchView(hand.kitchen, focus, String, null, UNITS), focus, UNITS);
};
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

const cherry = shippedFormula('cherry-hazelnut');
const shaped: Formula = { ...cherry, process: withFillingIn(cherry, 'shape').process! };

it('divides at less where the filling goes in later, shown and said alike', () => {
  expect(plain(viewAt(cherry, 'shape.divide').headline)).toBe('Divide into 900 g pieces');
  const { headline, spoken } = viewAt(shaped, 'shape.divide');
  expect(plain(headline)).toBe('Divide into 777 g pieces');
  expect(spoken).toContain('seven hundred and seventy-seven grams each');
});

it('tells at the final shape how much of each filling goes into a loaf', () => {
  const { detail, lines } = viewAt(shaped, 'shape.finalShape');
  expect(detail).toMatch(/^This much filling on each\./);
  expect(lines.map(({ label }) => plain(label))).toEqual([
    '71 g dried cherries',
    '53 g toasted hazelnuts',
  ]);
  expect(viewAt(cherry, 'shape.finalShape').lines).toEqual([]);
});

it('says there of what spoils how long it may stand', () => {
  const cheese: Filling = {
    ...{ id: 'cheese', name: 'fresh cheese', pct: 20, keeps: 'perishable' },
    allergens: ['milk'],
  };
  const today = { ...shippedFormula('lane-today'), fillings: [cheese] };
  const { care } = viewAt(today, 'shape.finalShape');
  expect(care).toContain('in the oven within 2 hours');
  expect(care).toContain('Raw dough is raw food');
  expect(viewAt(shaped, 'shape.finalShape').care).not.toContain('2 hours');
});

it('has the filling stirred into a spooned dough before it is weighed into its tins', () => {
  const rye = { ...shippedFormula('harbour-rye'), fillings: cherry.fillings };
  const { detail, lines } = viewAt(rye, 'shape.scoop');
  expect(plain(detail)).toBe('Stir the filling in, then 1000 g in each greased tin.');
  expect(lines).toHaveLength(2);
});
