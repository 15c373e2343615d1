import { withKeptAllergens } from '../circle/label/kept-allergens.ts';
import type { Formula } from '../formula/formula.ts';
import type { Misread } from '../formula/read-fields.ts';
import { readFormula } from '../formula/read-formula.ts';
import { sheetWords } from '../speech/words/sheets.ts';
import { unflatten } from './flatten.ts';
import type { Table } from './table.ts';

interface Named {
  readonly name: string;
  readonly rows: Table;
}

type OwnBase =
  | { readonly formula: Formula | null; readonly reason?: never }
  | { readonly formula: null; readonly reason: Misread };

/**
 * What stands behind a sheet of ours: the formula it was written from. Formula and reason left out:
 * the file is none of ours. A reason: it is, and what stands there is no formula any more.
 */
export function ownBase(tables: readonly Named[]): OwnBase {
  const rest = tables.find(
    ({ name, rows }) =>
      name === sheetWords.rest &&
      rows[0]?.[0] === sheetWords.path &&
      rows[0]?.[1] === sheetWords.value,
  );
  if (!rest) return { formula: null };
  const read = readFormula(unflatten(rest.rows.slice(1)));
  if (read.formula) return { formula: withKeptAllergens(read.formula) };
  return { formula: null, reason: { ...read.reason!, path: `${rest.name}, ${read.reason!.path}` } };
}
