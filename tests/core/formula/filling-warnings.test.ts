import { describe, expect, it } from 'vitest';
import { brought } from '../../../src/core/formula/brought.ts';
import {
  FILLING_FACTS,
  FILLING_KINDS,
  fillingOf,
} from '../../../src/core/formula/filling-facts.ts';
import { fillingWarnings } from '../../../src/core/formula/filling-warnings.ts';
import type { Filling, Formula } from '../../../src/core/formula/formula.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { readFormula } from '../../../src/core/formula/read-formula.ts';
import { fillingKinds } from '../../../src/core/speech/words/filling-kinds.ts';
import { tellNotice } from '../../../src/core/speech/tell-notice.ts';
import { shippedFormula } from './shipped.ts';

const cherry = shippedFormula('cherry-hazelnut');
const filled = (filling: Partial<Filling>, over: Partial<Formula> = {}): Formula => ({
  ...cherry,
  fillings: [{ id: 'one', name: 'One', pct: 30, keeps: 'shelf', allergens: [], ...filling }],
  ...over,
});
const keys = (formula: Formula): readonly string[] =>
  fillingWarnings(formula).map(({ key }) => key);
const valuesOf = (formula: Formula, key: string) =>
  fillingWarnings(formula).find((one) => one.key === key)?.values;

describe('what the fillings bring', () => {
  it('150 g of cheddar to 500 g of flour bring about half a percent of salt', () => {
    const cheese = fillingOf('hardCheese', { id: 'cheese', name: 'cheese', pct: 30 });
    expect(brought({ fillings: [cheese] }).salt).toBeCloseTo(0.51, 9);
  });

  it('counts a soaker’s water with their own', () => {
    const oats = { pct: 10, soak: { water: 120 }, brings: { salt: 0, water: 9 } };
    expect(brought({ fillings: [oats] }).water).toBeCloseTo(12.9, 9);
  });
});

describe('warnings of fillings', () => {
  it('has none for a usual one that says nothing', () => {
    expect(fillingWarnings(filled({}))).toEqual([]);
    expect(fillingWarnings({ ...cherry, fillings: [] })).toEqual([]);
  });

  it('counts the salt they bring, just over the most and not at it', () => {
    const brings = { salt: 2, water: 0 };
    expect(keys(filled({ brings }, { salt: 1.9 }))).toEqual([]);
    const over = filled({ brings }, { salt: 1.95 });
    expect(keys(over)).toEqual(['saltWithFilling']);
    expect(valuesOf(over, 'saltWithFilling')).toEqual({
      salt: expect.closeTo(2.55, 9),
      bring: expect.closeTo(0.6, 9),
      most: 2.5,
    });
    expect(keys(filled({ brings }, { salt: 2.6 }))).toEqual(['saltHigh']);
  });

  it('does not miss salt that the filling brings', () => {
    expect(keys(filled({}, { salt: 1.2 }))).toEqual(['saltLow']);
    expect(keys(filled({ brings: { salt: 2, water: 0 } }, { salt: 1.2 }))).toEqual([]);
  });

  it('tells a dough that its fillings make too wet', () => {
    const wet = filled({ brings: { salt: 0, water: 90 } }, { hydration: 84 });
    expect(valuesOf(wet, 'wetFilling')).toEqual({ water: expect.closeTo(111, 9), most: 110 });
    expect(keys({ ...wet, hydration: 83 })).toEqual([]);
  });

  it.each<[string, Partial<Filling>]>([
    ['perishableFilling', { keeps: 'perishable', from: 'freezer' }],
    ['cheeseStands', { keeps: 'hardCheese', from: 'fridge' }],
    ['fillingFrozen', { from: 'freezer' }],
    ['fillingCold', { from: 'fridge' }],
  ])('tells %s, with its name', (key, filling) => {
    expect(fillingWarnings(filled(filling))).toMatchObject([{ key, values: { filling: 'One' } }]);
  });

  it('says the two hours of what spoils, and the heat that cheese may stand at', () => {
    const units = { heat: 'F', weight: 'g' } as const;
    const told = (filling: Partial<Filling>) =>
      fillingWarnings(filled(filling)).map((one) => tellNotice(one, units));
    expect(told({ keeps: 'perishable' })[0]).toMatch(
      /final shape only, in the oven within 2 hours/,
    );
    expect(told({ keeps: 'hardCheese' })[0]).toMatch(/at up to 86 °F/);
  });
});

describe('the table of fillings', () => {
  it('makes of every kind a filling that a formula can have, and has a word for it', () => {
    const fillings = FILLING_KINDS.map((kind) =>
      fillingOf(kind, { id: kind, name: fillingKinds[kind], pct: 5 }),
    );
    for (const filling of fillings) {
      const { formula, reason } = readFormula({ ...cherry, fillings: [filling] });
      expect(reason, filling.id).toBeUndefined();
      expect(formula!.fillings).toEqual([filling]);
    }
    expect(new Set(Object.values(fillingKinds)).size).toBe(FILLING_KINDS.length);
    expect(Object.keys(FILLING_FACTS)).toEqual([...FILLING_KINDS]);
  });

  it('lets nothing stand that is wet, but what is cured dry in salt', () => {
    for (const [kind, { brings, keeps }] of Object.entries(FILLING_FACTS)) {
      if (keeps === 'shelf' && brings.water > 20) expect(kind).toBe('dryOlives');
      if (keeps === 'perishable') expect(FILLING_FACTS[kind as 'inOil'].from).toBe('fridge');
    }
  });

  it.each(FILLING_KINDS.filter((kind) => FILLING_FACTS[kind].keeps === 'perishable'))(
    '%s is refused in a night in the fridge',
    (kind) => {
      const filling = fillingOf(kind, { id: 'one', name: 'One', pct: 30 });
      const { reason } = makeRecipe({ ...cherry, fillings: [filling] }, { loaves: 2, piece: 900 });
      expect(reason?.key).toBe('perishableRetarded');
    },
  );
});
