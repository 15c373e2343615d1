import { describe, expect, it } from 'vitest';
import { feedWater } from '../../../src/core/day/feed-water.ts';
import type { MixInput } from '../../../src/core/day/mix-known.ts';
import { firstWater, reckonedDough, secondWater } from '../../../src/core/day/mix-water.ts';
import { wantedDough, USUAL_DOUGH } from '../../../src/core/heat/wanted.ts';
import type { Reading } from '../../../src/core/records/fact.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const T0 = Date.UTC(2031, 4, 3, 6);
const at = (minutes: number, reading: Reading): MixInput['seen'][number] => ({
  at: T0 + minutes * MINUTE,
  reading,
});
/** Weighed at 0, mixed at 10, rested from 20 to 50, worked in at 60, measured from 70. */
const MIXED = {
  'levain.look': T0 - HOUR,
  'mix.weigh': T0,
  'mix.first': T0 + 10 * MINUTE,
  'mix.rest': T0 + 20 * MINUTE,
  'mix.salt': T0 + 50 * MINUTE,
  'mix.work': T0 + 60 * MINUTE,
  'mix.temperature': T0 + 70 * MINUTE,
};
const input = (change: Partial<MixInput> = {}): MixInput => ({
  recipe: RECIPE,
  kitchen: 20,
  entered: { 'levain.look': T0 - HOUR, 'mix.weigh': T0 },
  seen: [],
  offsets: [],
  ...change,
});
/** The recipe’s first mix by hand: 790 g of flour, 160 g of levain at 100 %, 520 g of water. */
const byHand = (flour: number, levain: number, water: number, q = 7.55): number => {
  const [f, l, w] = [790 * 1.84, 80 * 1.84 + 80 * 4.185, 520 * 4.185];
  return (f * flour + l * levain + w * water + q * 790) / (f + l + w);
};

describe('the first water', () => {
  it('brings flour and levain at the kitchen’s warmth to what is wanted', () => {
    const water = firstWater(input())!;
    expect(byHand(20, 20, water.celsius)).toBeCloseTo(25, 6);
    expect(water).toMatchObject({ grams: 520, wanted: USUAL_DOUGH, capped: false, ice: 0 });
    expect(byHand(20, 20, water.cool, 15.1)).toBeCloseTo(25, 6);
    expect(byHand(20, 20, water.warm, 0)).toBeCloseTo(25, 6);
    expect(water.lands).toBeCloseTo(25, 6);
  });

  it('goes by the formula’s own temperature where it names one', () => {
    const formula = { ...RECIPE.formula, doughCelsius: 27 };
    expect(wantedDough(formula)).toBe(27);
    const water = firstWater(input({ recipe: { ...RECIPE, formula } }))!;
    expect(byHand(20, 20, water.celsius)).toBeCloseTo(27, 6);
  });

  it('goes by what the baker wants of this bake, from when it was said', () => {
    const formula = { ...RECIPE.formula, doughCelsius: 27 };
    const recipe = { ...RECIPE, formula };
    const seen = [at(2, { what: 'wantedDough', celsius: 23 })];
    const water = firstWater(input({ recipe, seen }))!;
    expect(water.wanted).toBe(23);
    expect(byHand(20, 20, water.celsius)).toBeCloseTo(23, 6);
    expect(firstWater(input({ recipe, seen }), T0)!.wanted).toBe(27);
    const entered = MIXED;
    const [plain, cooler] = [
      secondWater(input({ entered })),
      secondWater(input({ entered, seen })),
    ];
    expect(cooler!.wanted).toBe(23);
    expect(cooler!.celsius).toBeLessThan(plain!.celsius);
  });

  it('takes flour, levain and kitchen as they were measured, the last of each', () => {
    const seen = [
      at(2, { what: 'flourTemperature', celsius: 14 }),
      at(1, { what: 'flourTemperature', celsius: 16 }),
      at(3, { what: 'levainTemperature', celsius: 23 }),
    ];
    expect(byHand(14, 23, firstWater(input({ seen }))!.celsius)).toBeCloseTo(25, 6);
    const warm = [at(1, { what: 'kitchenTemperature', celsius: 26 })];
    expect(byHand(26, 26, firstWater(input({ seen: warm }))!.celsius)).toBeCloseTo(25, 6);
  });

  it('leaves out what was read later than asked, and a levain before it was ripe', () => {
    const seen = [
      at(-600, { what: 'levainTemperature', celsius: 4 }),
      at(30, { what: 'flourTemperature', celsius: 10 }),
    ];
    const water = firstWater(input({ seen }), T0 + 10 * MINUTE)!;
    expect(byHand(20, 20, water.celsius)).toBeCloseTo(25, 6);
  });

  it('is 40 °C at the most, and says where the dough lands then', () => {
    const seen = [at(1, { what: 'flourTemperature', celsius: 2 })];
    const water = firstWater(input({ kitchen: 8, seen }))!;
    expect(water).toMatchObject({ celsius: 40, capped: true });
    expect(water.lands).toBeCloseTo(byHand(2, 8, 40), 6);
    expect(water.lands).toBeLessThan(24.5);
  });

  it('is iced where the tap is too warm, by the tap that was measured', () => {
    const seen = [at(1, { what: 'water', celsius: 24, of: 'tap' })];
    const water = firstWater(input({ kitchen: 31, seen }))!;
    const melts = water.ice * (334 + 4.185 * 24 + 2.05 * 18);
    expect(water.celsius).toBeLessThan(24);
    expect(melts).toBeCloseTo(520 * 4.185 * (24 - water.celsius), 3);
  });
});

describe('the second water', () => {
  const salted = { ...MIXED };
  const resting = input({ entered: { ...salted, 'mix.work': T0 + 60 * MINUTE } });

  it('gives back what the rest took, reckoned at the bowl’s own pace', () => {
    const water = secondWater(resting)!;
    const cooled = 20 + 5 * Math.exp(-0.5 / 5);
    const ofDough = 790 * 1.84 + 80 * 1.84 + 80 * 4.185 + 520 * 4.185;
    const together = (ofDough * cooled + 65 * 4.185 * water.celsius) / (ofDough + 65 * 4.185);
    expect(together).toBeCloseTo(25, 6);
    expect(water.lands).toBeCloseTo(25, 6);
  });

  it('goes by the dough as it was measured, and is a weak lever held to 40 °C', () => {
    const seen = [at(45, { what: 'doughTemperature', celsius: 22 })];
    const water = secondWater({ ...resting, seen })!;
    expect(water).toMatchObject({ celsius: 40, capped: true });
    expect(water.lands).toBeGreaterThan(22.5);
    expect(water.lands).toBeLessThan(23.5);
  });

  it('is cold, and of ice, where the dough is too warm', () => {
    const seen = [at(45, { what: 'doughTemperature', celsius: 26.5 })];
    const water = secondWater({ ...resting, seen })!;
    expect(water.celsius).toBeLessThan(15);
    expect(water.ice).toBeGreaterThan(0);
    expect(water.capped).toBe(false);
  });

  it('is none where the recipe has none', () => {
    const lines = { ...RECIPE.lines, second: RECIPE.lines.second.slice(0, 1) };
    expect(secondWater({ ...resting, recipe: { ...RECIPE, lines } })).toBeNull();
  });
});

describe('the finished dough as the balance has it', () => {
  const measured = T0 + 72 * MINUTE;

  it('is what was wanted where everything was poured as advised', () => {
    expect(reckonedDough(input({ entered: MIXED }), measured)).toBeCloseTo(25, 6);
  });

  it('is less by what was already made up for, and by water poured cooler', () => {
    const learned = reckonedDough(input({ entered: MIXED, offsets: [2, 2, 2, 2, 2] }), measured)!;
    expect(learned).toBeCloseTo(23, 0);
    const water = firstWater(input())!.celsius;
    const seen = [at(5, { what: 'water', celsius: water - 6, of: 'bowl' } as const)];
    const cooler = reckonedDough(input({ entered: MIXED, seen }), measured)!;
    expect(cooler).toBeLessThan(23.5);
    expect(cooler).toBeGreaterThan(21);
  });

  it('is not known of a dough joined later, or measured long after it was worked in', () => {
    expect(reckonedDough(input({ entered: MIXED }), T0 + 95 * MINUTE)).toBeNull();
    const { 'mix.weigh': _, ...joined } = MIXED;
    expect(reckonedDough(input({ entered: joined }), measured)).toBeNull();
  });
});

describe('the water of a feed', () => {
  const fed = (seen: MixInput['seen'] = []) =>
    feedWater(input({ entered: { 'levain.feed': T0 }, seen }))!;
  /** 40 g of seed, 80 g of flour and of water. */
  const jar = (seed: number, water: number): number => {
    const [s, f, w] = [20 * 1.84 + 20 * 4.185, 80 * 1.84, 80 * 4.185];
    return (s * seed + f * 20 + w * water + 7.55 * 80) / (s + f + w);
  };

  it('makes up for a starter out of the fridge, or as it was measured', () => {
    expect(jar(4, fed().celsius)).toBeCloseTo(25, 6);
    const seen = [at(1, { what: 'levainTemperature', celsius: 19 })];
    expect(jar(19, fed(seen).celsius)).toBeCloseTo(25, 6);
  });

  it('is not moved by what doughs taught', () => {
    const offsets = [3, 3, 3, 3, 3];
    expect(feedWater(input({ entered: { 'levain.feed': T0 }, offsets }))!.celsius).toBe(
      fed().celsius,
    );
  });
});
