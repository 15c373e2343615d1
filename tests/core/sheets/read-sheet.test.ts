import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amounts } from '../../../src/core/formula/amounts.ts';
import { turnColumn } from '../../../src/core/sheets/columns.ts';
import { flatten, unflatten } from '../../../src/core/sheets/flatten.ts';
import { firstAnswers, readSheet, type ReadSheet } from '../../../src/core/sheets/read-sheet.ts';
import type { SheetAnswers } from '../../../src/core/sheets/sheet-lines.ts';
import type { Table } from '../../../src/core/sheets/table.ts';
import { writeSheet } from '../../../src/core/sheets/write-sheet.ts';
import { SHIPPED, shippedFormula } from '../formula/shipped.ts';
import { goodFormula } from './formulas.ts';

const like = { formula: shippedFormula('lane-wheat'), own: false };

const read = (table: Table, said: Partial<SheetAnswers> = {}): ReadSheet =>
  readSheet(table, { ...firstAnswers(table, like), ...said }, like, 'Kitchen sheet');

const formulaOf = (made: ReadSheet) => {
  if (!made.formula) throw new Error(JSON.stringify(made));
  return made.formula;
};

const NAIVE: Table = [
  ['Ingredient', 'Weight (g)', "Baker's %"],
  ['Bread flour', 1000, '100 %'],
  ['Water', '750 g', '75 %'],
  ['Levain', 200, '20 %'],
  ['Salt', '20', '2 %'],
];

/** What is written, as it would come back: a text, a number, or what a reckoned cell came to. */
const back = (rows: ReturnType<typeof writeSheet>['rows']): Table =>
  rows.map((row) =>
    row.map((cell) =>
      cell === null
        ? null
        : 'text' in cell
          ? cell.text
          : 'number' in cell
            ? cell.number
            : cell.value,
    ),
  );

describe('a sheet of somebody', () => {
  // 1000 flour, 750 water, 200 levain: 77.3 % hydration, 9.1 % prefermented, salt 2 → 1.82: exact arithmetic.
  it('in % of the flour in the bowl is kept in % of all flour', () => {
    expect(read(NAIVE)).toEqual({ formula: null, ask: { what: 'convention' } });
    expect(read(NAIVE, { convention: 'bowl' })).toEqual({
      formula: null,
      ask: { what: 'levainHydration' },
    });
    const formula = formulaOf(read(NAIVE, { convention: 'bowl', levainHydration: 1 }));
    expect(formula.hydration).toBeCloseTo(77.2727, 3);
    expect(formula.levain.pff).toBeCloseTo(0.0909, 4);
    expect(formula.salt).toBeCloseTo(1.8182, 4);
    expect(formula.name).toBe('Kitchen sheet');
    const { levain, firstWater, secondWater, salt, flours } = amounts(formula, 1970);
    expect(levain).toBeCloseTo(200, 9);
    expect(firstWater + secondWater).toBeCloseTo(750, 9);
    expect(salt).toBeCloseTo(20, 9);
    expect(flours[0]!.grams).toBeCloseTo(1000, 9);
  });

  it('in % of all flour is kept as it stands', () => {
    const formula = formulaOf(read(NAIVE, { convention: 'whole', levainHydration: 1 }));
    expect(formula.hydration).toBeCloseTo(75, 9);
    expect(formula.levain.pff).toBeCloseTo(0.1, 9);
  });

  it('is read from its % where it has no weights, from its weights where it has both', () => {
    const pct = NAIVE.map(([name, , pct]) => [name!, pct!]);
    const formula = formulaOf(read(pct, { convention: 'bowl', levainHydration: 1 }));
    expect(formula.hydration).toBeCloseTo(77.2727, 3);
    // 15 of 600 is 2.5 %, printed as 3.
    const rounded = NAIVE.map((row, i) => (i === 4 ? ['Salt', 25, '3 %'] : row));
    const weighed = formulaOf(read(rounded, { convention: 'bowl', levainHydration: 1 }));
    expect(amounts(weighed, 1975).salt).toBeCloseTo(25, 9);
  });

  it('may have units in its cells, percent cells that hold 0.75, other words and no headings', () => {
    const units: Table = [
      ['Zutat', 'Menge'],
      ['Weizenmehl', '0,8 kg'],
      ['Roggenmehl', '200 g'],
      ['Wasser', '1 lb'],
      ['Sauerteig', '200'],
      ['Salz', '0,7 oz'],
      ['Summe', '1.500'],
    ];
    const german = formulaOf(read(units, { convention: 'bowl', levainHydration: 1 }));
    expect(german.flours.map(({ grain }) => grain)).toEqual(['wheat', 'rye']);
    expect(german.hydration).toBeCloseTo((453.59237 + 100) / 11, 6);
    expect(german.salt).toBeCloseTo((0.7 * 28.349523125) / 11, 6);
    const bare: Table = [
      ['rye flour', 1],
      ['water', 0.75],
      ['starter', 0.2],
      ['salt', 0.02],
    ];
    const columns = { roles: ['name', 'pct'], from: 0, unit: 'g' } as const;
    const small = formulaOf(read(bare, { columns, convention: 'bowl', levainHydration: 1 }));
    expect(small.hydration).toBeCloseTo(77.2727, 3);
  });

  it('asks how a filling keeps that nobody knows, and knows one of the same name', () => {
    const cherry = { formula: shippedFormula('cherry-hazelnut'), own: false };
    const table: Table = [...NAIVE, ['Dried cherries', 160, null], ['Soft cheese', 100, null]];
    const said = {
      ...firstAnswers(table, cherry),
      convention: 'bowl',
      levainHydration: 1,
    } as const;
    expect(readSheet(table, said, cherry, 'x').ask).toEqual({
      ...{ what: 'keeps', row: 6, name: 'Soft cheese' },
    });
    const kept = readSheet(table, { ...said, keeps: { 6: 'perishable' } }, cherry, 'x');
    expect(kept.formula?.fillings).toMatchObject([
      { id: 'cherry', keeps: 'shelf', prepare: ['cut'] },
      { id: 'soft-cheese', keeps: 'perishable', allergens: [] },
    ]);
    expect(kept.formula?.fillings[1]).not.toHaveProperty('packet');
  });

  it('takes no packet as read that its own baker has not', () => {
    const cherry = shippedFormula('cherry-hazelnut');
    const readHere = {
      ...cherry,
      flours: cherry.flours.map((one) => ({ ...one, packet: 'read' as const })),
      fillings: cherry.fillings.map((one) => ({ ...one, packet: 'read' as const })),
    };
    const table: Table = [...NAIVE, ['Toasted hazelnuts', 120, null]];
    const packets = (own: boolean) => {
      const base = { formula: readHere, own };
      const said = {
        ...firstAnswers(table, base),
        convention: 'bowl',
        levainHydration: 1,
      } as const;
      const { fillings } = readSheet(table, said, base, 'x').formula!;
      return fillings.map(({ allergens, packet }) => [allergens, packet]);
    };
    expect(packets(false)).toEqual([[['tree nuts (hazelnut)'], undefined]]);
    expect(packets(true)).toEqual([[['tree nuts (hazelnut)'], 'read']]);
  });

  it('is mended by presses: what a column is, what a line is', () => {
    const odd: Table = [
      ['a', 'b', 'c'],
      [500, 'x', 'flour'],
      [375, 'y', 'water'],
      [100, 'z', 'the old one'],
      [10, 'q', 'salt'],
    ];
    let { columns } = firstAnswers(odd, like);
    while (columns.roles[2] !== 'name') columns = turnColumn(columns, 2);
    while (columns.roles[0] !== 'weight') columns = turnColumn(columns, 0);
    expect(columns.roles).toEqual(['weight', 'none', 'name']);
    const kinds = { 0: 'none', 3: 'levain' } as const;
    const said = { columns, kinds, convention: 'bowl', levainHydration: 1 } as const;
    expect(formulaOf(read(odd, said)).levain.pff).toBeCloseTo(50 / 550, 9);
  });
});

describe('what cannot be read is told by its row', () => {
  const said = { convention: 'bowl', levainHydration: 1 } as const;
  const put = (row: number, ...cells: readonly (string | number | null)[]): Table =>
    NAIVE.map((one, i) => (i === row ? cells : one));
  const noPct = (table: Table): Table => table.map(([name, weight]) => [name!, weight!]);

  it.each([
    ['a negative weight', put(2, 'Water', -750, null), 'row 3', 'a weight of 0 or more', '"-750"'],
    ['a text', put(4, 'Salt', 'a pinch', ''), 'row 5', 'a weight of 0 or more', '"a pinch"'],
    ['an empty cell', put(4, 'Salt', null, null), 'row 5', 'a weight of 0 or more', 'nothing'],
    ['no flour at all', put(1, 'Bread flour', 0, 0), 'flours', 'flour of more than 0', '0'],
    ['no line of flour', put(1, 'Total', 1, 1), 'flours', 'flour of more than 0', 'no line'],
    ['no levain', put(3, 'Total', 1, 1), 'levain', 'a line with the levain', 'none'],
    ['no water', put(2, 'Water', 0, null), 'hydration', 'a number 20 to 200', '9.090909090909092'],
    [
      'a filling of none',
      [...NAIVE, ['Spelt flour', 0, null]],
      'row 6, flours[1].pct',
      'a number 0.1 to 100',
      '0',
    ],
  ] as const)('%s', (_, table, path, expected, got) => {
    const { reason } = read(noPct(table), said);
    expect(reason).toEqual({ path, expected, got });
  });

  it('flours in % that are no whole', () => {
    const table: Table = [
      ['Ingredient', '%'],
      ['flour', 80],
      ['water', 75],
      ['levain', 20],
      ['salt', 2],
    ];
    expect(read(table, said).reason).toEqual({
      ...{ path: 'flours', expected: 'flours that sum to 100 %', got: 'a sum of 80' },
    });
  });

  it('a levain that is wetter than all the water', () => {
    const wet = { convention: 'whole', levainHydration: 2 } as const;
    const table: Table = [
      ['Ingredient', 'g'],
      ['flour', 1000],
      ['water', 200],
      ['levain', 600],
      ['salt', 20],
    ];
    expect(read(table, wet).reason).toEqual({
      ...{ path: 'levain', expected: 'at most 100 % water in it', got: '200 %' },
    });
  });

  it('two hundred lines, by the limit that there is', () => {
    const many: Table = [
      ...noPct(NAIVE),
      ...Array.from({ length: 200 }, (_, i) => [`seed ${i}`, 5]),
    ];
    const keeps = Object.fromEntries(many.map((_, i) => [i, 'shelf' as const]));
    expect(read(many, { ...said, keeps }).reason).toEqual({
      ...{ path: 'fillings', expected: 'a list of 0 to 12', got: 'a list of 200' },
    });
    const huge = Array.from({ length: 401 }, () => ['x', 1]);
    expect(read(huge, said).reason).toMatchObject({ expected: 'at most 400 rows', got: '401' });
  });
});

describe('a sheet of ours', () => {
  it.each(SHIPPED)('of %s holds the dough that the core reckons', (name) => {
    const formula = shippedFormula(name);
    const { rows } = writeSheet(formula, 1000);
    const last = rows.at(-1)![3] as { value: number };
    const exact = amounts(formula, last.value);
    expect(exact.totalFlour).toBeCloseTo(1000, 9);
    const of = (label: string) =>
      (
        rows.findLast((row) => (row[0] as { text: string } | null)?.text === label)![3] as {
          value: number;
        }
      ).value;
    expect(of('First water')).toBeCloseTo(exact.firstWater, 9);
    expect(of('Second water')).toBeCloseTo(exact.secondWater, 9);
    expect(of('Salt')).toBeCloseTo(exact.salt, 9);
    for (const { name: flour, grams } of exact.flours) expect(of(flour)).toBeCloseTo(grams, 9);
  });

  it('comes back as the formula it was, with what is in no line of it beside', () => {
    fc.assert(
      fc.property(goodFormula, fc.integer({ min: 1, max: 5000 }), (formula, flour) => {
        const table = back(writeSheet(formula, flour).rows);
        const own = { formula: unflatten(flatten(formula)) as typeof formula, own: true };
        expect(own.formula).toEqual(formula);
        expect(readSheet(table, firstAnswers(table, own), own, 'x')).toEqual({ formula });
      }),
      { numRuns: 200, seed: 5 },
    );
  });
});
