import type { Process } from '../../../src/core/formula/formula.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';

const PROCESS: Process = {
  rest: 30,
  touches: [
    { kind: 'fold', after: 30 },
    { kind: 'laminate', after: 30 },
    { kind: 'fold', after: 30 },
  ],
  rise: 90,
  shaping: 'round',
  benchRest: 20,
  counter: 20,
  retard: 840,
  warm: 0,
  fridge: 4,
  vessel: 'pot',
  preheat: 45,
  lidded: 18,
  open: 20,
  recovery: 10,
  cool: 120,
};

/** A small filled recipe of our own for machine tests; its arithmetic is not what is tested here. */
export const RECIPE: Recipe = {
  formula: {
    id: 'test-cherry',
    version: 1,
    name: 'Cherry and hazelnut',
    flours: [{ id: 'wheat', name: 'Wheat flour', grain: 'wheat', pct: 100 }],
    hydration: 75,
    secondWater: 0.1,
    levain: { pff: 0.09, hydration: 1, feed: { seed: 1, flour: 2, water: 2 } },
    salt: 1.9,
    fillings: [
      { id: 'cherry', name: 'Dried cherries', pct: 15, keeps: 'shelf', allergens: [] },
      { id: 'hazelnut', name: 'Hazelnuts', pct: 15, keeps: 'shelf', allergens: ['hazelnut'] },
    ],
    piece: 900,
    process: PROCESS,
  },
  loaves: 2,
  piece: 900,
  lines: {
    feed: [
      { item: 'seed', name: 'Starter', grams: 40, division: 1 },
      { item: 'flour', name: 'Flour', grams: 80, division: 1 },
      { item: 'water', name: 'Water', grams: 80, division: 1 },
    ],
    first: [
      { item: 'flour:wheat', name: 'Wheat flour', grams: 790, division: 1 },
      { item: 'water', name: 'First water', grams: 520, division: 1 },
      { item: 'levain', name: 'Levain', grams: 160, division: 1 },
    ],
    second: [
      { item: 'salt', name: 'Salt', grams: 16.5, division: 0.1 },
      { item: 'secondWater', name: 'Second water', grams: 65, division: 1 },
    ],
    filling: [
      { item: 'filling:cherry', name: 'Dried cherries', grams: 130, division: 1 },
      { item: 'filling:hazelnut', name: 'Hazelnuts', grams: 130, division: 1 },
    ],
  },
  keepBack: 30,
  dough: 1836,
  process: PROCESS,
  warnings: [],
};

/** Two seeds of one name and group, and a soaker with its water. */
export const SEEDED: Recipe = {
  ...RECIPE,
  formula: {
    ...RECIPE.formula,
    id: 'test-seeds',
    name: 'Seed and oat',
    fillings: [
      { id: 'pumpkin', name: 'Seeds', pct: 8, keeps: 'shelf', allergens: [], group: 'seeds' },
      { id: 'sesame', name: 'Seeds', pct: 4, keeps: 'shelf', allergens: [], group: 'seeds' },
      { id: 'oats', name: 'Oats', pct: 10, keeps: 'shelf', allergens: [], soak: { water: 100 } },
    ],
  },
  lines: {
    ...RECIPE.lines,
    filling: [
      { item: 'filling:pumpkin', name: 'Seeds', grams: 70, division: 1 },
      { item: 'filling:sesame', name: 'Seeds', grams: 35, division: 1 },
      { item: 'filling:oats', name: 'Oats', grams: 78, division: 1 },
      { item: 'soak:oats', name: 'Water for oats', grams: 77, division: 1 },
    ],
  },
};

/** The same dough, baked free on a hot stone with steam. */
export const STONE: Recipe = {
  ...RECIPE,
  process: { ...RECIPE.process, vessel: 'stone', preheat: 60, lidded: 15, open: 22 },
};

/** The same day: it rises warm, and bakes in an open tin. */
export const TIN: Recipe = {
  ...RECIPE,
  process: {
    ...RECIPE.process,
    counter: 0,
    retard: 0,
    warm: 120,
    vessel: 'tin',
    preheat: 30,
    lidded: 0,
    open: 40,
  },
};

/** A dough of much rye: no touch, spooned into its tin. */
export const SCOOP: Recipe = {
  ...TIN,
  process: { ...TIN.process, touches: [], shaping: 'scoop', benchRest: 0, warm: 90 },
};
