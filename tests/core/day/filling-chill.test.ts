import { describe, expect, it } from 'vitest';
import { bulkDough } from '../../../src/core/day/bulk-dough.ts';
import { slowedBy, withFilling } from '../../../src/core/day/filling-chill.ts';
import type { WaitInput } from '../../../src/core/day/waits.ts';
import { temperatureAt, TAU } from '../../../src/core/clock/stretch.ts';
import type { Filling } from '../../../src/core/formula/formula.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import { OPENING_BELIEF } from '../../../src/core/readiness/belief.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const T0 = Date.UTC(2031, 4, 3, 6);
const at = (minutes: number) => T0 + minutes * MINUTE;
/** 200 g of one filling into 1700 g of dough. */
const filledWith = (change: Partial<Filling>): Recipe => {
  const filling: Filling = {
    id: 'one',
    name: 'One',
    pct: 20,
    keeps: 'shelf',
    allergens: [],
    ...change,
  };
  return {
    ...RECIPE,
    dough: 1900,
    formula: { ...RECIPE.formula, fillings: [filling] },
    lines: {
      ...RECIPE.lines,
      filling: [{ item: 'filling:one', name: 'One', grams: 200, division: 1 }],
    },
  };
};
const input = (change: Partial<WaitInput> = {}): WaitInput => ({
  stage: 'bulk.between',
  now: at(120),
  recipe: filledWith({ prepare: ['drain'] }),
  kitchen: 24,
  entered: { 'mix.first': T0, 'mix.work': at(30) },
  touches: 2,
  prior: OPENING_BELIEF,
  seen: [{ at: at(40), reading: { what: 'doughTemperature', celsius: 27 } }],
  done: [],
  again: false,
  ...change,
});
const cold: WaitInput['seen'] = [
  ...input().seen,
  { at: at(90), reading: { what: 'fillingTemperature', celsius: 5 } },
];
const celsiusAt = (one: WaitInput, minutes: number) =>
  temperatureAt(bulkDough(one, TAU.bowl).path, minutes / 60);

describe('a filling in the dough', () => {
  it('of 200 g at 5 °C makes 1.7 kg at 27 °C 24.3 °C', () => {
    expect(withFilling(input({ seen: cold }), T0)!(27)).toBeCloseTo(24.27, 2);
  });

  it('is as warm as the kitchen, or as the fridge where it was kept there', () => {
    const makes = (change: Partial<Filling>, more: Partial<WaitInput> = {}) =>
      withFilling(input({ recipe: filledWith(change), ...more }), T0)!(24);
    expect(makes({})).toBeCloseTo(24, 9);
    expect(makes({ prepare: ['soak'] })).toBeLessThan(22);
    expect(makes({ keeps: 'hardCheese' })).toBeLessThan(23);
    expect(makes({ keeps: 'hardCheese' }, { done: ['takeOut'] })).toBeCloseTo(24, 9);
    expect(makes({ from: 'shelf' })).toBeCloseTo(24, 9);
    expect(makes({ from: 'fridge' })).toBeCloseTo(makes({ keeps: 'hardCheese' }), 9);
    expect(makes({ from: 'freezer' })).toBeCloseTo(makes({ from: 'fridge' }), 9);
    expect(makes({ soak: { water: 100 } })).toBeCloseTo(makes({ prepare: ['soak'] }), 9);
  });

  it('brings the cold of its soaker’s water too', () => {
    const one = filledWith({ soak: { water: 100 } });
    const water = { item: 'soak:one', name: 'water for One', grams: 200, division: 1 };
    const recipe: Recipe = {
      ...one,
      dough: 2100,
      lines: { ...one.lines, filling: [...one.lines.filling, water] },
    };
    const dry = withFilling(input({ recipe: one }), T0)!(24);
    expect(withFilling(input({ recipe }), T0)!(24)).toBeLessThan(dry - 1);
  });

  it('cools the dough at the minute it is rolled in, and later readings mend that', () => {
    const rolled = { ...input().entered, 'bulk.roll': at(100) };
    const one = input({ seen: cold, entered: rolled });
    expect(celsiusAt(one, 99)).toBeCloseTo(celsiusAt(input(), 99), 9);
    expect(celsiusAt(one, 101)).toBeLessThan(celsiusAt(input(), 101) - 2);
    const seen: WaitInput['seen'] = [
      ...cold,
      { at: at(110), reading: { what: 'doughTemperature', celsius: 25.6 } },
    ];
    expect(celsiusAt({ ...one, seen }, 110)).toBeCloseTo(25.6, 0);
  });

  it('puts the likely hour off by what that cold costs, and by nothing where it is as warm', () => {
    const longer = slowedBy(input({ seen: cold }), at(100));
    expect(longer).toBeGreaterThan(15);
    expect(longer).toBeLessThan(60);
    const warm: WaitInput['seen'] = [
      ...input().seen,
      { at: at(90), reading: { what: 'fillingTemperature', celsius: celsiusAt(input(), 100) } },
    ];
    expect(Math.abs(slowedBy(input({ seen: warm }), at(100)))).toBeLessThan(0.1);
    expect(
      slowedBy(
        input({ recipe: { ...RECIPE, lines: { ...RECIPE.lines, filling: [] } } }),
        T0 + HOUR,
      ),
    ).toBe(0);
  });
});
