// @vitest-environment node
import FormulaParser from 'fast-formula-parser';
import fc from 'fast-check';
import { Inflate, strToU8, zipSync } from 'fflate';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { readXlsx } from '../../../src/adapters/sheets/read-xlsx.ts';
import { partTexts, safeZip } from '../../../src/adapters/sheets/safe-zip.ts';
import { writeXlsx } from '../../../src/adapters/sheets/write-xlsx.ts';
import { amounts } from '../../../src/core/formula/amounts.ts';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { readFormula } from '../../../src/core/formula/read-formula.ts';
import { ownBase } from '../../../src/core/sheets/own-base.ts';
import { firstAnswers, readSheet } from '../../../src/core/sheets/read-sheet.ts';
import { SHIPPED, shippedFormula } from '../../core/formula/shipped.ts';
import { goodFormula } from '../../core/sheets/formulas.ts';
import { HOSTILE_NAMES } from '../../hostile/texts.ts';

/** The cells of the first sheet as the file has them: what is reckoned by its formula. */
async function cellsOf(formula: Formula, flour: number): Promise<Map<string, string | number>> {
  const xml = partTexts(safeZip(await writeXlsx(formula, flour)).zip!)['xl/worksheets/sheet1.xml']!;
  const cells = new Map<string, string | number>();
  for (const [, address, inner] of xml.matchAll(/<c r="([A-Z]+\d+)"[^>]*>(.*?)<\/c>/g)) {
    const formulaText = /<f>(.*?)<\/f>/.exec(inner!)?.[1];
    const value = /<v>(.*?)<\/v>/.exec(inner!)?.[1];
    cells.set(address!, formulaText ?? Number(value));
  }
  return cells;
}

const LETTERS = 'ABCD';

/** What cells come to by a sheet's own rules, reckoned by a library that knows nothing of ours. */
function reckoner(cells: ReadonlyMap<string, string | number>): (address: string) => number {
  const known = new Map<string, number>();
  const value = ({ row, col }: { row: number; col: number }): number =>
    at(`${LETTERS[col - 1]}${row}`);
  // A parser that is in the middle of one cell cannot be asked for another.
  const idle: FormulaParser[] = [];
  const fresh = (): FormulaParser =>
    new FormulaParser({
      onCell: value,
      onRange: ({ from, to }) =>
        Array.from({ length: to.row - from.row + 1 }, (_, i) => [
          value({ row: from.row + i, col: from.col }),
        ]),
    });
  const at = (address: string): number => {
    const held = cells.get(address) ?? 0;
    if (typeof held === 'number') return held;
    const seen = known.get(address);
    if (seen !== undefined) return seen;
    const parser = idle.pop() ?? fresh();
    const found = parser.parse(held, { sheet: 'x', row: 1, col: 1 }) as number;
    idle.push(parser);
    known.set(address, found);
    return found;
  };
  return at;
}

const lastOf = (cells: ReadonlyMap<string, unknown>): string =>
  [...cells.keys()].filter((address) => address.startsWith('D')).at(-1)!;

describe('the xlsx that is written', () => {
  it.each(SHIPPED)('of %s rescales as the core does when all flour is typed over', async (name) => {
    const formula = shippedFormula(name);
    const cells = await cellsOf(formula, 1000);
    for (const flour of [1000, 1, 437.5, 12_667.1]) {
      cells.set('D4', flour);
      const at = reckoner(cells);
      const dough = at(lastOf(cells));
      const exact = amounts(formula, dough);
      expect(exact.totalFlour).toBeCloseTo(flour, 6);
      const n = formula.flours.length;
      expect(at(`D${5 + n}`)).toBeCloseTo(exact.levainWater + exact.finalWater, 6);
      expect(at(`D${6 + n}`)).toBeCloseTo(exact.salt, 6);
      // A soaker's water stands under what soaks in it.
      const further = exact.fillings.flatMap((one) => [
        one,
        ...exact.soakers.filter(({ id }) => id === one.id),
      ]);
      further.forEach(({ grams }, i) => expect(at(`D${7 + n + i}`)).toBeCloseTo(grams, 6));
      const bowl = 7 + n + further.length + 3;
      expect(at(`D${bowl}`)).toBeCloseTo(exact.levainFlour, 6);
      expect(at(`D${bowl + 1}`)).toBeCloseTo(exact.levainWater, 6);
      formula.flours.forEach((_, i) =>
        expect(at(`D${bowl + 2 + i}`)).toBeCloseTo(exact.flours[i]!.grams, 6),
      );
      expect(at(`D${bowl + 2 + n}`)).toBeCloseTo(exact.firstWater, 6);
      expect(at(`D${bowl + 3 + n}`)).toBeCloseTo(exact.secondWater, 6);
    }
  });

  it('has what its cells came to beside them, and asks a sheet program to reckon anew', async () => {
    const texts = partTexts(safeZip(await writeXlsx(shippedFormula('lane-wheat'), 1000)).zip!);
    expect(texts['xl/workbook.xml']!.match(/<calcPr[^>]*>/g)).toEqual([
      '<calcPr fullCalcOnLoad="1"/>',
    ]);
    const sheet = texts['xl/worksheets/sheet1.xml']!;
    expect(sheet.match(/<f>/g)!.length).toBeGreaterThan(10);
    expect(sheet.match(/<\/f><v>[\d.]+<\/v>/g)).toHaveLength(sheet.match(/<f>/g)!.length);
  });

  it('follows a % that is typed over', async () => {
    const cells = await cellsOf(shippedFormula('cherry-hazelnut'), 1000);
    expect(cells.get('C7')).toBe(75);
    cells.set('C7', 80);
    const { hydration, ...rest } = shippedFormula('cherry-hazelnut');
    expect(hydration).toBe(75);
    const exact = amounts({ ...rest, hydration: 80 }, reckoner(cells)(lastOf(cells)));
    expect(exact.totalFlour).toBeCloseTo(1000, 6);
  });

  it('reads back as the formula that was written', { timeout: 30_000 }, async () => {
    await fc.assert(
      fc.asyncProperty(goodFormula, async (formula) => {
        const { tables } = await readXlsx(await writeXlsx(formula, 1000));
        const base = ownBase(tables!);
        expect(base.formula).toEqual(formula);
        const own = { formula: base.formula!, own: true };
        const { rows } = tables![0]!;
        expect(readSheet(rows, firstAnswers(rows, own), own, 'x')).toEqual({ formula });
      }),
      { numRuns: 25, seed: 3 },
    );
  });

  it('what was typed over in it is what is read', async () => {
    const formula = shippedFormula('cherry-hazelnut');
    const { tables } = await readXlsx(await writeXlsx(formula, 1000));
    const rows = tables![0]!.rows.map((row) =>
      row[0] === 'Water'
        ? ['Water', 'water', 78, 780]
        : row[0] === 'dried cherries'
          ? [row[0], row[1]!, 20, 200]
          : row,
    );
    const own = { formula: ownBase(tables!).formula!, own: true };
    const read = readSheet(rows, firstAnswers(rows, own), own, 'x').formula!;
    expect(read.hydration).toBe(78);
    expect(read.fillings[0]).toEqual({ ...formula.fillings[0]!, pct: 20 });
    expect(read.process).toEqual(formula.process);
  });
});

describe('an xlsx that is none, or too much', () => {
  const parts = async (change: (parts: Record<string, string>) => void): Promise<Uint8Array> => {
    const texts = {
      ...partTexts(safeZip(await writeXlsx(shippedFormula('lane-wheat'), 1000)).zip!),
    };
    change(texts);
    return zipSync(
      Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, strToU8(text)])),
    );
  };

  it(
    'a zip that swells is not unpacked beyond its bound, whatever size it claims',
    { timeout: 30_000 },
    async () => {
      const bomb = await parts((texts) => {
        texts['xl/worksheets/sheet1.xml'] = ' '.repeat(20_000_000);
      });
      expect(bomb.length).toBeLessThan(100_000);
      const push = vi.spyOn(Inflate.prototype, 'push');
      expect((await readXlsx(bomb)).reason).toEqual({
        path: 'xl/worksheets/sheet1.xml',
        expected: 'a whole part of at most 2000000 bytes',
        got: 'a larger or broken one',
      });
      // Some of it was unpacked, and most was never looked at.
      const unpacked = push.mock.calls.reduce((sum, [data]) => sum + data.length, 0);
      push.mockRestore();
      expect(unpacked).toBeGreaterThan(0);
      expect(unpacked).toBeLessThan(bomb.length / 2);
      // The sizes in the zip's own list say 1 byte: nothing changes.
      const liar = bomb.slice();
      const view = new DataView(liar.buffer);
      for (let at = 0; at < liar.length - 46; at++) {
        if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 1, true);
      }
      expect((await readXlsx(liar)).reason?.path).toBe('xl/worksheets/sheet1.xml');
    },
  );

  it.each([
    [
      'far down',
      (xml: string) => xml.replaceAll('r="5"', 'r="1048576"').replaceAll('A5"', 'A1048576"'),
      'at most 400 rows',
    ],
    ['far out', (xml: string) => xml.replaceAll('"D5"', '"XFD5"'), 'at most 30 columns'],
  ] as const)(
    'a cell %s is not reached by laying out all before it',
    async (_, change, expected) => {
      const far = await parts((texts) => {
        texts['xl/worksheets/sheet1.xml'] = change(texts['xl/worksheets/sheet1.xml']!);
      });
      expect((await readXlsx(far)).reason).toMatchObject({
        path: 'xl/worksheets/sheet1.xml',
        expected,
      });
    },
  );

  it.each([
    ['nothing', new Uint8Array()],
    ['a text', strToU8('Ingredient,g')],
    ['an empty zip', zipSync({})],
    ['a zip of something else', zipSync({ 'a.xml': strToU8('<a/>') })],
  ])('%s is refused by what was expected', async (_, data) => {
    const { tables, reason } = await readXlsx(data);
    expect(tables).toBeNull();
    expect(reason).toMatchObject({ path: 'the file', expected: 'an xlsx file' });
    expect(reason!.got).not.toBe('');
  });
});

describe('names that would be more than text', () => {
  const base = shippedFormula('cherry-hazelnut');
  const named = HOSTILE_NAMES.flatMap((name) => {
    const [first, ...others] = base.fillings;
    const wanted = { ...base, name, fillings: [{ ...first!, name }, ...others] };
    const { formula } = readFormula(wanted);
    return formula === null ? [] : [formula];
  });

  it('are texts of a live sheet, nothing of it reckons them, and they come back as they were', async () => {
    expect(named.length).toBeGreaterThan(50);
    for (const formula of named) {
      const file = await writeXlsx(formula, 1000);
      const parts = partTexts(safeZip(file).zip!);
      const cells = parts['xl/worksheets/sheet1.xml']!;
      // What is reckoned are the sheet's own formulas alone: as many as of any other name.
      expect(cells.match(/<f>/g)).toHaveLength(plainFormulas);
      const { tables, reason } = { reason: null, ...(await readXlsx(file)) };
      expect(reason, JSON.stringify(formula.name)).toBeNull();
      expect(ownBase(tables!).formula, JSON.stringify(formula.name)).toEqual(formula);
      expect(tables![0]!.rows[0]![0]).toBe(formula.name);
    }
  }, 60_000);

  let plainFormulas = 0;
  beforeAll(async () => {
    const parts = partTexts(safeZip(await writeXlsx(base, 1000)).zip!);
    plainFormulas = parts['xl/worksheets/sheet1.xml']!.match(/<f>/g)!.length;
  });
});
