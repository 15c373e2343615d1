import { expect, test } from 'vitest';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { fromBowl, toBowl } from '../../../src/core/formula/in-bowl-percent.ts';
import { withPercent } from '../../../src/core/formula/live-percent.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { relevain } from '../../../src/core/formula/relevain.ts';
import { scaleBy } from '../../../src/core/formula/scale-by.ts';
import { reasons, warnings } from '../../../src/core/speech/words/notices.ts';
import { tellNotice } from '../../../src/core/speech/tell-notice.ts';

const METRIC = { heat: 'C', weight: 'g' } as const;

const plain: Formula = {
  id: 'lane-wheat',
  version: 1,
  name: 'lane wheat',
  flours: [{ id: 'wheat', name: 'wheat flour', grain: 'wheat', pct: 100 }],
  hydration: 75,
  secondWater: 0.08,
  levain: { pff: 0.09, hydration: 1, feed: { seed: 1, flour: 5, water: 5 } },
  salt: 2,
  fillings: [],
  piece: 900,
  process: {
    rest: 30,
    touches: [{ kind: 'fold', after: 30 }],
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
  },
};
const rye = [{ id: 'rye', name: 'rye flour', grain: 'rye', pct: 100 }] as const;
const cherries = { id: 'c', name: 'cherries', pct: 60, keeps: 'shelf', allergens: [] } as const;
const cheese = {
  id: 'f',
  name: 'fresh cheese',
  pct: 20,
  keeps: 'perishable',
  allergens: [],
} as const;

const strange: Formula = {
  ...plain,
  hydration: 96.25,
  salt: 2.75,
  levain: { pff: 0.3, hydration: 1, feed: { seed: 1, flour: 5, water: 4 } },
  fillings: [cherries],
  process: { ...plain.process, rise: 120, fridge: 8, rest: 5, cool: 30, retard: 60 },
};

/** Same day, with no sheet fold. */
const today = { ...plain.process, retard: 0, warm: 120, touches: [] };
const many: Formula = {
  ...plain,
  process: today,
  fillings: [
    { ...cheese, brings: { salt: 3, water: 90 }, pct: 50 },
    { id: 'h', name: 'cheddar', pct: 5, keeps: 'hardCheese', allergens: ['milk'] },
    { id: 'b', name: 'berries', pct: 5, keeps: 'shelf', allergens: [], from: 'freezer' },
    { id: 'o', name: 'olives', pct: 5, keeps: 'shelf', allergens: [], from: 'fridge' },
  ],
};

/** Reasons of those that make no recipe. */
const refused = [
  scaleBy(plain, { by: 'bread', loaves: 1, bread: 9000 }),
  scaleBy(plain, { by: 'dough', grams: 0 }),
  scaleBy(plain, { by: 'bin', flours: { wheat: 1 } }),
  fromBowl(plain, { ...toBowl(plain), flours: [] }),
  withPercent(plain, 'filling:fig', 5),
  relevain({ ...plain, hydration: 60, levain: { ...plain.levain, pff: 0.4 } }, 2),
].flatMap(({ reason }) => reason ?? []);

/** All that the formula's own code has to tell of these cases. */
const told = [
  [strange, { loaves: 5, piece: 900 }],
  [many, { loaves: 1, piece: 900 }],
  [
    { ...plain, salt: 1 },
    { loaves: 1, piece: 900 },
  ],
  [
    { ...plain, flours: rye, process: { ...plain.process, shaping: 'scoop' } },
    { loaves: 1, piece: 900 },
  ],
  [plain, { loaves: 0, piece: 900 }],
  [plain, { loaves: 1, piece: 9000 }],
  [
    { ...plain, fillings: [cheese] },
    { loaves: 1, piece: 900 },
  ],
  [
    {
      ...plain,
      flours: [
        { id: 'wheat', name: 'wheat flour', grain: 'wheat', pct: 95 },
        { id: 'rye', name: 'rye flour', grain: 'rye', pct: 5 },
      ],
      levain: { ...plain.levain, flours: [{ id: 'rye', pct: 100 }] },
    },
    { loaves: 1, piece: 900 },
  ],
  [
    { ...plain, name: '' },
    { loaves: 1, piece: 900 },
  ],
  [
    { ...plain, hydration: 50, levain: { ...plain.levain, pff: 0.4, hydration: 2 } },
    { loaves: 1, piece: 900 },
  ],
] as const satisfies readonly (readonly [Formula, { loaves: number; piece: number }])[];

test('whatever the formula code tells has a sentence with no hole in it', () => {
  const made = told.flatMap(([formula, wanted]) => {
    const { recipe, reason } = makeRecipe(formula, wanted);
    return recipe === null ? [reason] : recipe.warnings;
  });
  const notices = [...made, ...refused];
  expect([...new Set(notices.map((n) => n.key))].sort()).toEqual(
    [...Object.keys(reasons), ...Object.keys(warnings)].sort(),
  );
  for (const notice of notices) {
    const sentence = tellNotice(notice, METRIC);
    expect(sentence, notice.key).toMatch(/\.$/);
    expect(sentence, notice.key).not.toMatch(/[{}]|\d\.\d\d|NaN|undefined/);
  }
});

test('parts of the process are named as a baker names them', () => {
  const values = { part: 'benchRest', minutes: 55, least: 10, most: 30 };
  expect(tellNotice({ key: 'processOutside', values }, METRIC)).toMatch(
    /^Bench rest: 55 min; 10 to 30/,
  );
});

test('numbers show one decimal at most', () => {
  expect(tellNotice({ key: 'saltHigh', values: { salt: 2.749, most: 2.5 } }, METRIC)).toBe(
    'Salt is 2.7 %, over the usual 2.5. The dough will rise slowly.',
  );
});

test('weights and heats are told in the baker’s units', () => {
  const cold = { key: 'fridgeOutside', values: { fridge: 8, least: 3, most: 5 } };
  expect(tellNotice(cold, METRIC)).toMatch(/^Fridge at 8 °C; 3 °C to 5 °C is wanted. Over 5 °C/);
  expect(tellNotice(cold, { heat: 'F', weight: 'g' })).toMatch(/^Fridge at 46 °F; 37 °F to 41 °F/);
  const heavy = { key: 'heavyDough', values: { dough: 3175.15, most: 3000 } };
  expect(tellNotice(heavy, METRIC)).toMatch(/^3175 g is a lot/);
  expect(tellNotice(heavy, { heat: 'C', weight: 'oz' })).toMatch(/^7 lb is a lot/);
});

test('an unknown notice throws by name', () => {
  expect(() => tellNotice({ key: 'constructor', values: {} }, METRIC)).toThrow(
    'No sentence for the notice constructor.',
  );
});
