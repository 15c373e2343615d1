import readSheets from 'read-excel-file/universal';
import type { Misread } from '../../core/formula/read-fields.ts';
import { tableFault, TABLE_LIMITS, type Cell, type Table } from '../../core/sheets/table.ts';
import { partTexts, safeZip } from './safe-zip.ts';

export type ReadTables =
  | {
      readonly tables: readonly { readonly name: string; readonly rows: Table }[];
      readonly reason?: never;
    }
  | { readonly tables: null; readonly reason: Misread };

/** Sheets of one file that are looked at. */
const MOST_SHEETS = 20;
/** Cells that stand in a part's text, empty ones too: more than the limits hold is not parsed. */
const MOST_CELLS = 60_000;

const refuse = (path: string, expected: string, got: string): ReadTables => ({
  tables: null,
  reason: { path, expected, got },
});

/** A cell far out would have every empty one before it made: rows and columns are counted first. */
function farOut(texts: Readonly<Record<string, string>>): ReadTables | null {
  const { rows, columns } = TABLE_LIMITS;
  for (const [name, text] of Object.entries(texts)) {
    let count = 0;
    for (const [, letters = '', digits = ''] of text.matchAll(
      /\br\s*=\s*["']([A-Za-z]*)(\d+)["']/g,
    )) {
      count += 1;
      if (digits.length > 7 || Number(digits) > rows) {
        return refuse(name, `at most ${rows} rows`, `row ${digits.slice(0, 12)}`);
      }
      if (letters.length > 2 || columnOf(letters) > columns) {
        return refuse(name, `at most ${columns} columns`, `column ${letters.slice(0, 12)}`);
      }
    }
    if (count > MOST_CELLS) return refuse(name, `at most ${MOST_CELLS} cells`, String(count));
  }
  return null;
}

const columnOf = (letters: string): number =>
  [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);

const toCell = (value: unknown): Cell =>
  typeof value === 'string' || typeof value === 'number' ? value : null;

/**
 * The sheets of an xlsx file as what their cells show: numbers, texts, what reckoned cells came to when
 * it was last saved. Nothing is unpacked or laid out beyond the limits of a table. Null with the part,
 * what was expected and what came. Never rejects.
 */
export async function readXlsx(data: Uint8Array): Promise<ReadTables> {
  const { zip, reason } = safeZip(data);
  if (zip === null) return { tables: null, reason };
  try {
    const far = farOut(partTexts(zip));
    if (far) return far;
    const sheets = await readSheets(zip.buffer, { trim: false });
    if (sheets.length > MOST_SHEETS) {
      return refuse('the file', `at most ${MOST_SHEETS} sheets`, String(sheets.length));
    }
    const tables = sheets.map(({ sheet, data: rows }) => ({
      name: sheet,
      rows: rows.map((row) => row.map(toCell)),
    }));
    for (const { name, rows } of tables) {
      const fault = tableFault(rows);
      if (fault) return { tables: null, reason: { ...fault, path: `${name}, ${fault.path}` } };
    }
    if (tables.length === 0) return refuse('the file', 'a sheet', 'none');
    return { tables };
  } catch (error) {
    return refuse('the file', 'an xlsx file', error instanceof Error ? error.message : 'another');
  }
}
