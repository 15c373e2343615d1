import { strToU8, zipSync } from 'fflate';
import { readFile } from '../../../src/adapters/sheets/read-file.ts';
import { readLink, writeLink } from '../../../src/adapters/sheets/link.ts';
import { partTexts, safeZip } from '../../../src/adapters/sheets/safe-zip.ts';
import { writeXlsx } from '../../../src/adapters/sheets/write-xlsx.ts';
import type { Misread } from '../../../src/core/formula/read-fields.ts';
import { readFormula } from '../../../src/core/formula/read-formula.ts';
import { writeFormulas } from '../../../src/core/sheets/formula-file.ts';
import { firstAnswers, readSheet } from '../../../src/core/sheets/read-sheet.ts';
import type { Table } from '../../../src/core/sheets/table.ts';
import { writeCsv } from '../../../src/core/sheets/write-csv.ts';
import { writeSheet } from '../../../src/core/sheets/write-sheet.ts';
import { SHIPPED, shippedFormula } from '../../core/formula/shipped.ts';

/** Files and links broken by chance, from a seed, and what the readers make of each. */

export const KINDS = ['json', 'csv', 'xlsx', 'link'] as const;
type Kind = (typeof KINDS)[number];

/** Numbers from 0 to 1 that follow from a seed (mulberry32). */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

const BITS = [
  ...[
    '-1',
    '0',
    '1e309',
    'NaN',
    '12,5',
    '50 %',
    '500 g',
    '1/2',
    '=1+1',
    "'",
    '"',
    ';',
    ',',
    '\n',
    '\t',
  ],
  ...[
    '{',
    '}',
    '[',
    ']',
    ':',
    'null',
    'true',
    '"__proto__":{"salt":1},',
    '\u0000',
    '\uFEFF',
    '麦',
    '🥖',
  ],
  ...[
    '<v>',
    '</v>',
    '<f>',
    '&#x0;',
    '&lol;',
    '<!DOCTYPE x [<!ENTITY lol "lol">]>',
    'r="ZZ9999999"',
    '%',
    '#',
  ],
  ...['flour', 'water', 'levain', 'total', '9'.repeat(600), ' '.repeat(3000), '['.repeat(5000)],
];

/** A text with one to four of its places cut, doubled, turned round or filled with what does not belong. */
function breakText(text: string, next: () => number): string {
  let broken = text;
  for (let n = 1 + Math.floor(next() * 4); n > 0; n--) {
    const at = Math.floor(next() * (broken.length + 1));
    const to = Math.min(broken.length, at + Math.floor(next() * next() * 200));
    const bit = BITS[Math.floor(next() * BITS.length)]!;
    const how = Math.floor(next() * 6);
    const [before, held, after] = [broken.slice(0, at), broken.slice(at, to), broken.slice(to)];
    if (how === 0) broken = before;
    else if (how === 1) broken = before + after;
    else if (how === 2) broken = before + held + held + after;
    else if (how === 3) broken = before + bit + after;
    else if (how === 4) broken = before + bit + held + after;
    else broken = broken.replace(/[\d.]+(?=\D*$)|\d+/, bit);
  }
  return broken;
}

function breakBytes(bytes: Uint8Array, next: () => number): Uint8Array {
  const broken = bytes.slice(0, next() < 0.3 ? Math.floor(next() * bytes.length) : bytes.length);
  for (let n = Math.floor(next() * 12); n > 0 && broken.length > 0; n--) {
    broken[Math.floor(next() * broken.length)] = Math.floor(next() * 256);
  }
  return broken;
}

const FILES = await Promise.all(
  SHIPPED.map(async (name) => {
    const formula = shippedFormula(name);
    const xlsx = await writeXlsx(formula, 1000);
    return {
      json: writeFormulas([formula, formula]),
      csv: writeCsv(writeSheet(formula, 1000)),
      link: writeLink(formula)!,
      xlsx,
      parts: partTexts(safeZip(xlsx).zip!),
    };
  }),
);

/** The n-th broken file of a kind, of a run by this seed. */
export function brokenFile(kind: Kind, next: () => number): Uint8Array | string {
  const { json, csv, link, xlsx, parts } = FILES[Math.floor(next() * FILES.length)]!;
  if (kind === 'link') return breakText(link, next);
  if (kind !== 'xlsx') {
    const bytes = strToU8(breakText(kind === 'json' ? json : csv, next));
    return next() < 0.1 ? breakBytes(bytes, next) : bytes;
  }
  if (next() < 0.4) return breakBytes(xlsx, next);
  const names = Object.keys(parts);
  const name = names[Math.floor(next() * names.length)]!;
  const texts = { ...parts, [name]: breakText(parts[name]!, next) };
  return zipSync(
    Object.fromEntries(Object.entries(texts).map(([one, text]) => [one, strToU8(text)])),
  );
}

/** A sheet with every question answered, as a baker in a hurry would. */
function answered(table: Table, own: ReturnType<typeof shippedFormula> | null): Misread | null {
  const base = { formula: own ?? shippedFormula('lane-wheat'), own: own !== null };
  let said = firstAnswers(table, base);
  for (let asked = 0; asked < 500; asked++) {
    const read = readSheet(table, said, base, 'broken');
    if (read.formula) {
      if (readFormula(read.formula).formula === null) throw new Error('A formula that is none.');
      return null;
    }
    if (read.reason) return read.reason;
    const { ask } = read;
    if (ask.what === 'keeps') said = { ...said, keeps: { ...said.keeps, [ask.row]: 'perishable' } };
    else if (ask.what === 'sign') said = { ...said, sign: 'point' };
    else if (ask.what === 'convention') said = { ...said, convention: 'bowl' };
    else said = { ...said, levainHydration: 1 };
  }
  throw new Error('It never stops asking.');
}

/** Why a broken file is refused; null: what is left of it is a formula still. Throws where a reader does. */
export async function refused(file: Uint8Array | string): Promise<Misread | null> {
  if (typeof file === 'string') {
    const { formula, reason } = { reason: null, ...readLink(file) };
    return formula === null ? reason! : null;
  }
  const read = await readFile(file);
  if (read.kind === 'none') return read.reason;
  return read.kind === 'sheet' ? answered(read.table, read.own) : null;
}

/** Breaks so many files of a kind and has each read: how many were refused, and the longest it took, ms. */
export async function breakMany(
  kind: Kind,
  count: number,
  seed: number,
): Promise<{
  readonly refused: number;
  readonly longest: number;
  readonly unsaid: readonly string[];
}> {
  const next = chance(seed);
  let many = 0;
  let longest = 0;
  const unsaid: string[] = [];
  for (let n = 0; n < count; n++) {
    const file = brokenFile(kind, next);
    const began = performance.now();
    const reason = await refused(file);
    longest = Math.max(longest, performance.now() - began);
    if (reason === null) continue;
    many += 1;
    if (![reason.path, reason.expected, reason.got].every((text) => text !== '')) {
      unsaid.push(`${kind} ${seed}, ${n}: ${JSON.stringify(reason)}`);
    }
  }
  return { refused: many, longest, unsaid };
}
