import { strToU8 } from 'fflate';
import { readCsv } from '../../../src/adapters/sheets/read-csv.ts';
import { readFile } from '../../../src/adapters/sheets/read-file.ts';
import { readXlsx } from '../../../src/adapters/sheets/read-xlsx.ts';
import { readLink, writeLink } from '../../../src/adapters/sheets/link.ts';
import { writeXlsx } from '../../../src/adapters/sheets/write-xlsx.ts';
import { readFormula } from '../../../src/core/formula/read-formula.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { fromBase64Url, toBase64Url } from '../../../src/core/sheets/base64url.ts';
import { readFormulas, writeFormulas } from '../../../src/core/sheets/formula-file.ts';
import { LINK_LIMITS } from '../../../src/core/sheets/link-form.ts';
import { ownBase } from '../../../src/core/sheets/own-base.ts';
import { readAmount } from '../../../src/core/sheets/read-amount.ts';
import { firstAnswers, readSheet } from '../../../src/core/sheets/read-sheet.ts';
import { tableFault, type Cell, type Table } from '../../../src/core/sheets/table.ts';
import { writeCsv } from '../../../src/core/sheets/write-csv.ts';
import { writeSheet } from '../../../src/core/sheets/write-sheet.ts';
import { SHIPPED, rawFormula, shippedFormula } from '../../core/formula/shipped.ts';
import { breakBytes, breakText } from '../break-text.ts';
import {
  either,
  ofBytes,
  ofData,
  ofJson,
  ofText,
  orNothing,
  type Made,
  type Reader,
} from '../reader.ts';

const SOME = ['cherry-hazelnut', 'seed-oat', 'wholemeal'] as const;
const RAW = SHIPPED.map(rawFormula);
const FRAMES = SOME.map((name) => JSON.parse(writeFormulas([shippedFormula(name)])) as unknown);
const CSVS = SOME.map((name) => writeCsv(writeSheet(shippedFormula(name), 1000)));
const OTHERS_CSV =
  '\uFEFFZutat;Gramm\r\nMehl;500,0\r\nWasser;350,0\r\nSauerteig;100,0\r\nSalz;10,0\r\n';
const XLSX = await Promise.all(SOME.map((name) => writeXlsx(shippedFormula(name), 1000)));
const TABLES = CSVS.map((text) => readCsv(text).tables![0]!.rows);
const BASE = { formula: shippedFormula('lane-wheat'), own: false };

/** A formula that a reader took is one that bread can be reckoned of, or is told why not. */
const reckoned = (value: unknown): Made => {
  const { formula, reason } = { reason: null, ...readFormula(value) };
  if (formula === null) return either(null, reason);
  const made = makeRecipe(formula, { loaves: 2, piece: formula.piece });
  if (made.recipe === null && made.reason.key === 'formulaUnreadable')
    throw new Error('A formula that is read and is none.');
  return { taken: formula };
};

/** A sheet with every question answered, as somebody in a hurry would. */
function answered(table: Table): Made {
  if (tableFault(table)) return either(null, tableFault(table));
  let said = firstAnswers(table, BASE);
  for (let asked = 0; asked < 500; asked += 1) {
    const read = readSheet(table, said, BASE, 'bread');
    if (!read.ask) return either(read.formula, read.reason ?? null);
    const { ask } = read;
    if (ask.what === 'keeps') said = { ...said, keeps: { ...said.keeps, [ask.row]: 'shelf' } };
    else if (ask.what === 'sign') said = { ...said, sign: 'point' };
    else if (ask.what === 'convention') said = { ...said, convention: 'bowl' };
    else said = { ...said, levainHydration: 1 };
  }
  throw new Error('It never stops asking.');
}

const isCell = (value: unknown): value is Cell =>
  value === null || typeof value === 'string' || typeof value === 'number';
/** What reads files hands on a table of cells, whatever stood in them. */
const asTable = (value: unknown): Table =>
  (Array.isArray(value) ? (value as unknown[]) : []).map((row) =>
    (Array.isArray(row) ? (row as unknown[]) : []).map((cell) => (isCell(cell) ? cell : null)),
  );

const LINKS = SOME.map((name) => writeLink(shippedFormula(name))!);

/** Readers of formulas, and of the files, sheets and links that hold them. */
export const FORMULA_READERS: readonly Reader[] = [
  {
    of: 'core/formula/read-formula.ts readFormula',
    make: ofData(...RAW),
    read: reckoned,
    again: true,
    share: 2,
  },
  {
    of: 'core/sheets/formula-file.ts readFormulas',
    make: ofJson(...FRAMES, ...RAW),
    read: (text: string) => {
      const { formulas, reason } = { reason: null, ...readFormulas(text) };
      return either(formulas, reason);
    },
    share: 2,
  },
  {
    of: 'adapters/sheets/link.ts readLink',
    make: (chance) => {
      const link = chance.of(LINKS);
      if (chance.chance(0.5)) return chance.chance(0.1) ? link : breakText(link, chance);
      // The bytes behind a good beginning: what inflates them is reached.
      const at = link.indexOf('.') + 1;
      const bytes = Uint8Array.from(fromBase64Url(link.slice(at))!);
      return link.slice(0, at) + toBase64Url(breakBytes(bytes, chance));
    },
    read: (link: string) => {
      const { formula, reason } = { reason: null, ...readLink(link) };
      return either(formula, reason);
    },
  },
  {
    of: 'adapters/sheets/read-file.ts readFile',
    make: ofBytes(
      ...CSVS.map((text) => strToU8(text)),
      ...FRAMES.map((one) => strToU8(JSON.stringify(one))),
    ),
    read: async (bytes: Uint8Array) => {
      const read = await readFile(bytes);
      return read.kind === 'none' ? either(null, read.reason) : { taken: read };
    },
  },
  {
    of: 'adapters/sheets/read-xlsx.ts readXlsx',
    make: ofBytes(...XLSX),
    read: async (bytes: Uint8Array) => {
      const { tables, reason } = { reason: null, ...(await readXlsx(bytes)) };
      return either(tables, reason);
    },
    share: 0.3,
  },
  {
    of: 'adapters/sheets/read-csv.ts readCsv',
    make: ofText(...CSVS, OTHERS_CSV),
    read: (text: string) => {
      const { tables, reason } = { reason: null, ...readCsv(text) };
      return either(tables, reason);
    },
  },
  {
    of: 'core/sheets/read-sheet.ts readSheet',
    make: ofData(...TABLES),
    read: (value: unknown) => answered(asTable(value)),
  },
  {
    of: 'core/sheets/own-base.ts ownBase',
    make: (chance) => ofData(OWN_ROWS)(chance),
    read: (value: unknown) => {
      const found = ownBase([{ name: OWN_NAME, rows: asTable(value) }]);
      if (found.reason) return either(null, found.reason);
      return orNothing(found.formula);
    },
  },
  {
    of: 'core/sheets/read-amount.ts readAmount',
    make: ofText('12,5 %', '1.250,5 g', '2 lb', '1,500', '0.5 kg', '1 234 567,8'),
    read: (text: string) => orNothing(readAmount(text) ?? readAmount(text, 'comma')),
  },
  {
    of: 'core/sheets/base64url.ts fromBase64Url',
    make: ofText('ABCD-g', LINKS[0]!.slice(12)),
    // Of more letters nobody asks it.
    read: (text: string) => orNothing(fromBase64Url(text.slice(0, LINK_LIMITS.letters + 500))),
  },
];

const OWN = (await readXlsx(XLSX[0]!)).tables!.at(-1)!;
const OWN_NAME = OWN.name;
const OWN_ROWS = OWN.rows;
