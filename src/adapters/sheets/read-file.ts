import type { Misread } from '../../core/formula/read-fields.ts';
import { readFormulas } from '../../core/sheets/formula-file.ts';
import { ownBase } from '../../core/sheets/own-base.ts';
import type { ReadFile } from '../../core/sheets/handed.ts';
import { readCsv } from './read-csv.ts';
import { readXlsx } from './read-xlsx.ts';

/** Most bytes of any file that is looked into. Judgement. */
const MOST = 2_000_000;

/** Sheet programs still write CSV in the letters of one country: those of the west are the commonest. */
function textOf(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/**
 * A file by what it holds, whatever it is called: a zip is an xlsx, a brace begins JSON, all else is CSV.
 * Nothing is kept. Where it cannot be read: path, expected, got. Never rejects.
 */
export async function readFile(bytes: Uint8Array): Promise<ReadFile> {
  const none = (reason: Misread): ReadFile => ({ kind: 'none', reason });
  if (bytes.length > MOST) {
    return none({ path: 'the file', expected: `at most ${MOST} bytes`, got: String(bytes.length) });
  }
  const isZip = bytes[0] === 0x50 && bytes[1] === 0x4b;
  const text = isZip ? '' : textOf(bytes);
  if (!isZip && /^\uFEFF?\s*[{[]/.test(text)) {
    const { formulas, reason } = { reason: null, ...readFormulas(text) };
    return formulas === null ? none(reason!) : { kind: 'formulas', formulas };
  }
  const { tables, reason } = { reason: null, ...(isZip ? await readXlsx(bytes) : readCsv(text)) };
  if (tables === null) return none(reason!);
  const own = ownBase(tables);
  if (own.reason) return none(own.reason);
  return { kind: 'sheet', table: tables[0]!.rows, own: own.formula };
}
