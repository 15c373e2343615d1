import type { Misread } from '../formula/read-fields.ts';

/** A cell of a sheet as it came: a number, a text, or nothing. */
export type Cell = string | number | null;
/** Rows of a sheet, from the top; they need not be of one length. */
export type Table = readonly (readonly Cell[])[];

/** Most of a sheet that is read: a formula has no more lines by far. Judgement. */
export const TABLE_LIMITS = { rows: 400, columns: 30, letters: 500 } as const;

/** A cell as text, blanks at its ends left out. */
export const textOf = (cell: Cell | undefined): string =>
  cell === null || cell === undefined ? '' : String(cell).trim();

/** Why a sheet is too large to be one of a formula; null: it is not. Nothing else reads it before. */
export function tableFault(table: Table): Misread | null {
  const { rows, columns, letters } = TABLE_LIMITS;
  const over = (path: string, expected: string, got: string): Misread => ({ path, expected, got });
  if (table.length > rows) return over('the sheet', `at most ${rows} rows`, String(table.length));
  const width = Math.max(0, ...table.map((row) => row.length));
  if (width > columns) return over('the sheet', `at most ${columns} columns`, String(width));
  const isLong = (cell: Cell): boolean => typeof cell === 'string' && cell.length > letters;
  const long = table.findIndex((row) => row.some(isLong));
  return long < 0 ? null : over(`row ${long + 1}`, `cells of at most ${letters} letters`, 'more');
}
