// @vitest-environment node
import fc from 'fast-check';
import papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { readCsv } from '../../../src/adapters/sheets/read-csv.ts';
import { csvText } from '../../../src/core/sheets/csv-text.ts';
import { firstAnswers, readSheet } from '../../../src/core/sheets/read-sheet.ts';
import { writeCsv } from '../../../src/core/sheets/write-csv.ts';
import { writeSheet } from '../../../src/core/sheets/write-sheet.ts';
import { SHIPPED, shippedFormula } from '../../core/formula/shipped.ts';
import { HOSTILE_TEXTS } from '../../hostile/texts.ts';

it.each(SHIPPED)('the CSV of %s reads back as its ingredients', (name) => {
  const formula = shippedFormula(name);
  const { tables } = readCsv(writeCsv(writeSheet(formula, 1000)));
  const { rows } = tables![0]!;
  const base = { formula, own: false };
  const said = { ...firstAnswers(rows, base), convention: 'whole' } as const;
  const read = readSheet(rows, said, base, formula.name).formula!;
  expect(read.flours).toEqual(formula.flours);
  expect(read.hydration).toBeCloseTo(formula.hydration, 6);
  expect(read.levain.pff).toBeCloseTo(formula.levain.pff, 6);
  expect(read.salt).toBeCloseTo(formula.salt, 6);
  expect(read.fillings.map(({ name: one, pct }) => [one, Number(pct.toFixed(6))])).toEqual(
    formula.fillings.map(({ name: one, pct }) => [one, pct]),
  );
});

it.each([
  ['commas', 'Ingredient,g\nflour,500\nwater,350\nlevain,100\nsalt,10\n'],
  [
    'semicolons, decimal commas, a mark before it',
    '\uFEFFZutat;Gramm\r\nMehl;500,0\r\nWasser;350,0\r\nSauerteig;100,0\r\nSalz;10,0\r\n',
  ],
  [
    'tabs and empty lines',
    'Ingredient\tWeight\n\nflour\t0.5 kg\nwater\t350 g\n\nlevain\t100 g\nsalt\t10 g',
  ],
  ['quotes', '"Ingredient","g"\n"flour","500"\n"water","350"\n"levain","100"\n"salt","10"'],
])('a CSV with %s', (_, text) => {
  const { rows } = readCsv(text).tables![0]!;
  const base = { formula: shippedFormula('lane-wheat'), own: false };
  const said = { ...firstAnswers(rows, base), convention: 'bowl', levainHydration: 1 } as const;
  const { formula, reason } = { reason: null, ...readSheet(rows, said, base, 'x') };
  expect(reason).toBeNull();
  expect(formula!.hydration).toBeCloseTo((400 / 550) * 100, 9);
});

it('a name that a sheet program would reckon is guarded, and comes back as it was', () => {
  const formula = { ...shippedFormula('lane-wheat') };
  const evil = {
    ...formula,
    flours: formula.flours.map((one, i) => (i === 0 ? { ...one, name: '=1+1' } : one)),
  };
  const text = writeCsv(writeSheet(evil, 1000));
  expect(text).toContain(`\r\n"'=1+1","flour",`);
  expect(text).not.toMatch(/(^|,)"?=/m);
  expect(readCsv(text).tables![0]!.rows.some(([name]) => name === '=1+1')).toBe(true);
});

it.each([
  ['nothing', '', 'the file', 'rows of cells'],
  ['blank lines', '\n\n', 'the file', 'rows of cells'],
  ['bytes', 'PK\u0003\u0004\u0000', 'the file', 'a text'],
  ['a quote that never ends', 'a,b\n"c,d\ne,f', 'row 2', 'quotes in pairs'],
  ['too many rows', 'a,1\n'.repeat(401), 'the sheet', 'at most 400 rows'],
  ['too many columns', 'a,'.repeat(40), 'the sheet', 'at most 30 columns'],
  ['a long cell', `a,${'9'.repeat(501)}`, 'row 1', 'cells of at most 500 letters'],
  ['a long text', 'a'.repeat(500_001), 'the file', 'at most 500000 characters'],
])('%s is refused', (_, text, path, expected) => {
  const { tables, reason } = { reason: null, ...readCsv(text) };
  expect(tables).toBeNull();
  expect(reason).toMatchObject({ path, expected });
});

describe('texts that would be more than text', () => {
  /** A sheet program takes neither for a formula: it begins with an apostrophe, or with none of its signs. */
  const RUN = /^[=+\-@\t\r\n＝＋－＠]/;
  /** As another reader of CSV parts it: quotes first, then what parts cells and rows. */
  const cellsOf = (text: string): string[][] =>
    papa.parse<string[]>(text.replace('\uFEFF', ''), { delimiter: ',', newline: '\r\n' }).data;
  // No sheet of ours holds it: what reads a formula leaves it out.
  const TEXTS = HOSTILE_TEXTS.filter((text) => !text.includes('\u0000') && text.trim() !== '');

  it.each(TEXTS)(
    '%j is reckoned by nothing, in whichever cell, and comes back as it was',
    (text) => {
      const rows = [
        ['Ingredient', 'Kind', text],
        [text, 'flour', '100'],
        ['a', text, text],
      ];
      const written = csvText(rows);
      for (const cell of cellsOf(written).flat()) expect(cell).not.toMatch(RUN);
      expect(readCsv(written).tables?.[0]?.rows).toEqual(rows);
    },
  );

  it('any texts do', () => {
    const bits = ['|', '\t', ';', ',', '"', "'", '=', '\n', '\r\n', ' ', 'rye', '麦'];
    const cell = fc
      .array(fc.constantFrom(...bits), { minLength: 1, maxLength: 6 })
      .map((all) => `${all.join('')}x`);
    const table = fc.array(fc.tuple(cell, cell, cell, cell), { minLength: 2, maxLength: 6 });
    fc.assert(
      fc.property(table, (rows) => {
        const written = csvText(rows);
        for (const one of cellsOf(written).flat()) expect(one).not.toMatch(RUN);
        expect(readCsv(written).tables?.[0]?.rows).toEqual(rows);
      }),
      { numRuns: 500, seed: 3 },
    );
  });

  it('numbers stay numbers', () => {
    expect(csvText([[-2, 1.5, 1e21]])).toBe('\uFEFF-2,1.5,1e+21\r\n');
  });
});
