import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fillingShare } from '../../../src/core/formula/filling-share.ts';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { mixedAmounts } from '../../../src/core/formula/mixed-amounts.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import { SHIPPED, shippedFormula } from './shipped.ts';

const cherry = shippedFormula('cherry-hazelnut');
const wheat = shippedFormula('lane-wheat');

const made = (formula: Formula, loaves = 2, piece = 900): Recipe => {
  const { recipe, reason } = makeRecipe(formula, { loaves, piece });
  if (recipe === null) throw new Error(JSON.stringify(reason));
  return recipe;
};
const refused = (formula: Formula, loaves = 2, piece = 900) =>
  makeRecipe(formula, { loaves, piece }).reason;
const grams = (recipe: Recipe, list: keyof Recipe['lines'], item: string): number | undefined =>
  recipe.lines[list].find((line) => line.item === item)?.grams;
const warningKeys = (formula: Formula, loaves = 2) =>
  made(formula, loaves).warnings.map(({ key }) => key);
const withProcess = (over: Partial<Formula['process']>): Formula => ({
  ...cherry,
  process: { ...cherry.process, ...over },
});

const warm = (over: Partial<Formula['process']>): Formula => withProcess({ retard: 0, ...over });
const flours = (rye: number): Formula['flours'] => [
  { id: 'wheat', name: 'wheat', grain: 'wheat', pct: 100 - rye },
  { id: 'rye', name: 'rye', grain: 'rye', pct: rye },
];

describe('the formulas that come with the app', () => {
  it.each(SHIPPED)(
    '%s has no warnings but what the clock does not know, and how cheese keeps',
    (name) => {
      const told: Partial<Record<(typeof SHIPPED)[number], readonly string[]>> = {
        'harbour-rye': ['ryeOutside'],
        'cheese-seed': ['cheeseStands'],
      };
      expect(warningKeys(shippedFormula(name))).toEqual(told[name] ?? []);
    },
  );

  it('are of every kind that is baked for a circle', () => {
    const of = (holds: (formula: Formula) => boolean) =>
      SHIPPED.filter((n) => holds(shippedFormula(n)));
    const share = (formula: Formula, grain: string): number =>
      formula.flours.reduce((sum, f) => sum + (f.grain === grain ? f.pct : 0), 0);
    const has = (words: RegExp) => (formula: Formula) =>
      formula.fillings.some(({ name }) => words.test(name));
    expect(of(({ fillings }) => fillings.length === 0)).toContain('lane-wheat');
    expect(of((formula) => share(formula, 'wholeWheat') > 50)).toEqual(['wholemeal']);
    expect(of((formula) => share(formula, 'rye') > 0).length).toBeGreaterThan(2);
    expect(of(has(/cherries|hazelnuts/))).toEqual(['cherry-hazelnut']);
    expect(of(has(/olives/))).toEqual(['olive-seed']);
    expect(of(({ fillings }) => fillings.some(({ soak }) => soak))).toEqual(['seed-oat']);
    expect(of(({ fillings }) => fillings.some(({ keeps }) => keeps === 'hardCheese'))).toEqual([
      'cheese-seed',
    ]);
    expect(of(({ process }) => process.vessel === 'tin')).toEqual(['barley-tin', 'harbour-rye']);
    expect(of(({ levain }) => levain.flours !== undefined)).toEqual(['wholemeal']);
  });

  it('show every process: pot, tin and stone, cold and warm, shaped and spooned', () => {
    const processes = SHIPPED.map((name) => shippedFormula(name).process);
    const ways = processes.map(({ vessel, retard, shaping }) =>
      [vessel, retard > 0 ? 'cold' : 'warm', shaping].join(' '),
    );
    expect([...new Set(ways)].toSorted()).toEqual([
      'pot cold round',
      'pot warm round',
      'stone cold round',
      'tin warm round',
      'tin warm scoop',
    ]);
    for (const { vessel, lidded, retard, warm } of processes) {
      expect([vessel, lidded > 0]).toEqual([vessel, vessel !== 'tin']);
      expect(retard > 0).toBe(warm === 0);
    }
  });

  it('keep no filling that spoils, and name sesame', () => {
    const fillings = SHIPPED.flatMap((name) => shippedFormula(name).fillings);
    expect(new Set(fillings.map(({ keeps }) => keeps))).toEqual(new Set(['shelf', 'hardCheese']));
    expect(fillings.flatMap(({ allergens }) => allergens)).toContain('sesame');
  });

  it('puts 10–20 % filling into the cherry and hazelnut dough, and names the nut', () => {
    expect(fillingShare(cherry)).toBeGreaterThan(0.1);
    expect(fillingShare(cherry)).toBeLessThan(0.2);
    expect(cherry.fillings.flatMap(({ allergens }) => allergens)).toEqual(['tree nuts (hazelnut)']);
  });
});

describe('makeRecipe', () => {
  it('gives every line of the four lists in the order of the work', () => {
    const { lines } = made(cherry);
    const items = (list: keyof Recipe['lines']) => lines[list].map(({ item }) => item);
    expect(items('feed')).toEqual(['seed', 'flour:wheat', 'water']);
    expect(items('first')).toEqual(['flour:wheat', 'flour:rye', 'water', 'levain']);
    expect(items('second')).toEqual(['salt', 'secondWater']);
    expect(items('filling')).toEqual(['filling:cherry', 'filling:hazelnut']);
  });

  it('weighs 3 × 900 g of cherry and hazelnut as the sheet does by hand', () => {
    // 2700/.98 = 2755.1 g dough over 204.9 % → 1344.6 g flour; levain flour 121.0, from the wheat
    const recipe = made(cherry, 3);
    expect(grams(recipe, 'first', 'flour:wheat')).toBe(1025); // 1142.9 − 121.0 = 1021.9, by fives
    expect(grams(recipe, 'first', 'flour:rye')).toBe(201); // 201.7
    expect(grams(recipe, 'first', 'water')).toBe(806); // 1008.5 − 121.0 − 80.7 = 806.8
    expect(grams(recipe, 'first', 'levain')).toBe(242);
    expect(grams(recipe, 'second', 'salt')).toBe(25.5);
    expect(grams(recipe, 'second', 'secondWater')).toBe(80); // 80.7
  });

  it('makes levain for the dough and the starter kept back, and a little for the jar', () => {
    const recipe = made(cherry, 3);
    const feed = recipe.lines.feed.reduce((sum, line) => sum + line.grams, 0);
    expect(recipe.keepBack).toBe(30);
    expect(feed).toBeCloseTo((242.03 + 30) * 1.05, 0);
    const seed = grams(recipe, 'feed', 'seed') ?? 0; // fed 1 : 5 : 5, to 0.1 g
    expect(Math.abs(seed - feed / 11)).toBeLessThanOrEqual(0.1);
  });

  it('bakes a larger piece longer and leaves the formula as it was', () => {
    const recipe = made(cherry, 2, 1200);
    expect(recipe.process).toMatchObject({ lidded: 22, open: 22 });
    expect(recipe.formula.process).toMatchObject({ lidded: 18, open: 20 });
  });

  it.each([
    [0, 900, 'loavesOutside'],
    [37, 900, 'loavesOutside'],
    [2.5, 900, 'loavesOutside'],
    [Number.NaN, 900, 'loavesOutside'],
    [2, 149, 'pieceOutside'],
    [2, 2501, 'pieceOutside'],
    [2, Number.NaN, 'pieceOutside'],
  ])('refuses %d loaves of %d g: %s', (loaves, piece, key) => {
    expect(refused(cherry, loaves, piece)?.key).toBe(key);
  });

  it('refuses a perishable filling that would stand in the fridge or in bulk', () => {
    const fresh = cherry.fillings.map((f) => ({ ...f, keeps: 'perishable' as const }));
    expect(refused({ ...cherry, fillings: fresh })?.key).toBe('perishableRetarded');
    const noRetard = withProcess({ retard: 0, warm: 120 });
    expect(refused({ ...noRetard, fillings: fresh })?.key).toBe('perishableRetarded');
    const sameDay = withProcess({ retard: 0, touches: [] });
    expect(made({ ...sameDay, fillings: fresh }).loaves).toBe(2);
  });

  it('refuses a levain that brings more water than the formula has, and says how much', () => {
    const wet = {
      ...cherry,
      hydration: 45,
      levain: { ...cherry.levain, pff: 0.4, hydration: 1.2 },
    };
    const reason = refused(wet);
    expect(reason?.key).toBe('waterShort');
    // 1800/.98 over 174.9 % → 1050.2 g flour; .45 − .40·1.2 − .08·.45 = −.066 of it is missing
    expect(reason?.values['short']).toBe(70);
  });

  it('refuses a formula that cannot be read, with its path', () => {
    expect(refused({ ...cherry, salt: Number.NaN })).toEqual({
      key: 'formulaUnreadable',
      values: { path: 'salt', expected: 'a number 0 to 10', got: 'NaN' },
    });
  });

  it.each<[string, Formula]>([
    ['saltHigh', { ...cherry, salt: 2.6 }],
    ['saltLow', { ...cherry, salt: 1.4 }],
    ['hydrationOutside', { ...cherry, hydration: 96 }],
    ['pffOutside', { ...cherry, levain: { ...cherry.levain, pff: 0.26 } }],
    ['fillingOutside', { ...cherry, fillings: cherry.fillings.slice(0, 1) }],
    ['fillingAtShaping', withProcess({ touches: [{ kind: 'fold', after: 30 }] })],
    [
      'feedDisagrees',
      { ...cherry, levain: { ...cherry.levain, feed: { seed: 1, flour: 5, water: 4 } } },
    ],
    ['processOutside', withProcess({ rest: 90 })],
    ['processOutside', withProcess({ touches: [{ kind: 'laminate', after: 95 }] })],
    ['riseOutside', withProcess({ rise: 45 })],
    ['fridgeOutside', withProcess({ fridge: 8 })],
    ['processOutside', warm({ warm: 50 })],
    ['processOutside', withProcess({ vessel: 'tin', preheat: 30, open: 40 })],
    ['processOutside', withProcess({ vessel: 'stone', lidded: 25 })],
    ['scoopNeedsTin', withProcess({ shaping: 'scoop', benchRest: 0, cool: 720 })],
    ['ryeOutside', { ...cherry, flours: flours(41) }],
  ])('warns with %s and still gives the recipe', (key, formula) => {
    expect(warningKeys(formula)).toEqual([key]);
  });

  it('judges only the parts a process uses', () => {
    expect(warningKeys(warm({ warm: 120, counter: 200, fridge: 9 }))).toEqual([]);
    expect(warningKeys(withProcess({ warm: 5 }))).toEqual([]);
    expect(warningKeys({ ...cherry, flours: flours(40) })).toEqual([]);
  });

  it('warns above 3 kg of dough by hand', () => {
    expect(warningKeys(wheat, 3)).toEqual([]);
    expect(warningKeys(wheat, 4)).toEqual(['heavyDough']);
  });
});

describe('any numbers', () => {
  const num = fc.oneof(fc.double(), fc.constantFrom(0, -1, 1e9, Number.NaN, Infinity, -Infinity));
  const near = (least: number, most: number) =>
    fc.oneof({ weight: 9, arbitrary: fc.double({ min: least, max: most, noNaN: true }) }, num);
  const numbers = (value: unknown): number[] =>
    typeof value === 'number'
      ? [value]
      : typeof value === 'object' && value !== null
        ? Object.values(value).flatMap(numbers)
        : [];

  const anyFormula = fc
    .record({
      hydration: near(40, 110),
      secondWater: near(0, 0.3),
      pff: near(0.01, 0.4),
      levainHydration: near(0.5, 1.5),
      seed: near(0.5, 5),
      salt: near(0, 3),
      filling: near(0.5, 40),
    })
    .map((n) => ({
      ...cherry,
      hydration: n.hydration,
      secondWater: n.secondWater,
      levain: {
        pff: n.pff,
        hydration: n.levainHydration,
        feed: { seed: n.seed, flour: 5, water: 5 * n.levainHydration },
      },
      salt: n.salt,
      fillings: cherry.fillings.map((f) => ({ ...f, pct: n.filling })),
    }));

  it('never throw and never come out as anything but finite numbers', () => {
    fc.assert(
      fc.property(anyFormula, near(1, 36), near(150, 2500), (formula, loaves, piece) => {
        const answer = makeRecipe(formula, { loaves, piece });
        expect(answer.recipe === null).toBe(answer.reason !== undefined);
        for (const n of numbers(answer)) expect(Number.isFinite(n)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it('weigh lines sum to the dough within half the coarsest division', () => {
    let answered = 0;
    fc.assert(
      fc.property(anyFormula, fc.integer({ min: 1, max: 36 }), near(150, 2500), (f, n, piece) => {
        const { recipe } = makeRecipe(f, { loaves: n, piece });
        if (recipe === null) return;
        answered += 1;
        const { first, second, filling } = recipe.lines;
        const lines = [...first, ...second, ...filling];
        const sum = lines.reduce((all, line) => all + line.grams, 0);
        const coarsest = Math.max(...lines.map(({ division }) => division));
        const exact = mixedAmounts(f, n, piece).dough;
        expect(Math.abs(sum - exact)).toBeLessThanOrEqual(coarsest / 2 + 1e-6);
        // Filling and what bowl and hands leave of the dough are the pieces.
        const plain =
          exact - mixedAmounts(f, n, piece).fillings.reduce((all, one) => all + one.grams, 0);
        expect(exact - plain * 0.02).toBeCloseTo(n * piece, 6);
        expect(sum).toBeCloseTo(recipe.dough, 6);
        for (const { item, grams: weight, division } of lines) {
          expect(weight).toBeGreaterThanOrEqual(0);
          expect(weight / division).toBeCloseTo(Math.round(weight / division), 6);
          expect(lines.filter((line) => line.item === item)).toHaveLength(1);
        }
      }),
      { numRuns: 500 },
    );
    expect(answered).toBeGreaterThan(100);
  });

  it('every line is within one division of its exact weight', () => {
    const exact = mixedAmounts(cherry, 5, 777);
    const recipe = made(cherry, 5, 777);
    const salt = recipe.lines.second.find(({ item }) => item === 'salt');
    expect(Math.abs((salt?.grams ?? 0) - exact.salt)).toBeLessThanOrEqual(0.1);
    const levain = recipe.lines.first.find(({ item }) => item === 'levain');
    expect(Math.abs((levain?.grams ?? 0) - exact.levain)).toBeLessThanOrEqual(1);
  });
});
