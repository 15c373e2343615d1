import type { Misread } from '../formula/read-fields.ts';
import type { Filling } from '../formula/formula.ts';
import type { Convention } from '../formula/formula.ts';
import type { Columns, ColumnRole } from './columns.ts';
import { guessKind, type LineKind } from './line-kind.ts';
import { gramsOf, readAmount, type DecimalSign } from './read-amount.ts';
import { textOf, type Cell, type Table } from './table.ts';

/** What the baker said of a sheet, or what it says itself; null: not yet. Rows are counted from 0. */
export interface SheetAnswers {
  readonly columns: Columns;
  readonly sign: DecimalSign | null;
  readonly convention: Convention | null;
  /** 1 for 100 %. */
  readonly levainHydration: number | null;
  readonly kinds: Readonly<Record<number, LineKind>>;
  readonly keeps: Readonly<Record<number, Filling['keeps']>>;
}

/** A line of a sheet that is an ingredient: its amount in % or in grams, as all of its sheet. */
export interface SheetLine {
  readonly row: number;
  readonly name: string;
  readonly kind: Exclude<LineKind, 'none'>;
  readonly amount: number;
}

export interface SheetLines {
  readonly lines: readonly SheetLine[];
  readonly by: 'pct' | 'weight';
}

/** '"rye" in row 7': where a baker finds it; rows are counted from 1 there. */
export const rowPath = (row: number): string => `row ${row + 1}`;

const cellOf = (table: Table, row: number, { roles }: Columns, role: ColumnRole): Cell =>
  table[row]?.[roles.indexOf(role)] ?? null;

/** What a line is, as was said of it or else as it seems. */
export const kindOf = (table: Table, row: number, { columns, kinds }: SheetAnswers): LineKind =>
  kinds[row] ??
  guessKind(
    textOf(cellOf(table, row, columns, 'kind')),
    textOf(cellOf(table, row, columns, 'name')),
  );

/** Every row under the headings that has a name, for a baker to see what it is taken for. */
export const namedRows = (
  table: Table,
  answers: SheetAnswers,
): readonly { readonly row: number; readonly name: string; readonly kind: LineKind }[] =>
  table.flatMap((_, row) => {
    const name = textOf(cellOf(table, row, answers.columns, 'name'));
    return row < answers.columns.from || name === ''
      ? []
      : [{ row, name, kind: kindOf(table, row, answers) }];
  });

/**
 * The ingredients of a sheet. Weights where every line has one, for a printed % is rounded; else its %.
 * `exact` asks for % where both are there: a sheet of ours. Null with the row of the first line that has
 * neither, or has what no number of 0 or more can be read from.
 */
export function linesOf(
  table: Table,
  answers: SheetAnswers,
  exact = false,
): SheetLines | { readonly lines: null; readonly reason: Misread } {
  const { columns, sign } = answers;
  const rows = namedRows(table, answers).filter(({ kind }) => kind !== 'none');
  const amountIn = (row: number, role: 'pct' | 'weight'): number | null => {
    const read = readAmount(cellOf(table, row, columns, role), sign);
    if (read === null) return null;
    if (role === 'pct') return read.unit === 'g' ? null : read.value;
    if (read.unit === '%') return null;
    return read.unit === 'g' ? read.value : gramsOf(read.value, columns.unit);
  };
  const ways = exact ? (['pct', 'weight'] as const) : (['weight', 'pct'] as const);
  const by = ways.find(
    (role) => columns.roles.includes(role) && rows.every(({ row }) => amountIn(row, role) !== null),
  );
  const made = (role: 'pct' | 'weight'): SheetLine[] =>
    rows.flatMap(({ row, name, kind }) => {
      const amount = amountIn(row, role);
      return kind === 'none' || amount === null ? [] : [{ row, name, kind, amount }];
    });
  if (by) return { lines: made(by), by };
  const role = ways.find((one) => columns.roles.includes(one));
  if (role === undefined) {
    return {
      lines: null,
      reason: { path: 'columns', expected: 'one with % or weights', got: 'none' },
    };
  }
  const { row } = rows.find((one) => amountIn(one.row, role) === null)!;
  const got = textOf(cellOf(table, row, columns, role));
  return {
    lines: null,
    reason: {
      path: rowPath(row),
      expected: role === 'pct' ? 'a % of 0 or more' : 'a weight of 0 or more',
      got: got === '' ? 'nothing' : JSON.stringify(got.slice(0, 40)),
    },
  };
}
