import { readAmount, unitOf, type WeightUnit } from './read-amount.ts';
import { textOf, type Cell, type Table } from './table.ts';

/** What a column of a sheet holds. */
export type ColumnRole = 'name' | 'pct' | 'weight' | 'kind' | 'none';

/** What each column is, from the left, where the headings end, and the unit of bare weights. */
export interface Columns {
  readonly roles: readonly ColumnRole[];
  /** First row under the headings. */
  readonly from: number;
  readonly unit: WeightUnit;
}

/** Headings are looked for in so many rows. */
const HEADING_ROWS = 20;

/** Words of headings, ours and a few of other tongues; all small letters. Judgement. */
const HEADINGS: Readonly<Record<Exclude<ColumnRole, 'none'>, RegExp>> = {
  name: /ingredient|ingrédient|ingrediente|zutat|^name$|^item$|^what$/,
  pct: /%|percent|prozent|pourcent|^pct$/,
  weight:
    /weight|gewicht|poids|menge|amount|^(g|kg|oz|lb|lbs|grams?|gramm|ounces?|pounds?)$|\((g|kg|oz|lb)\)/,
  kind: /^(kind|type|art|group)$/,
};

const roleOf = (heading: Cell | undefined): ColumnRole => {
  const text = textOf(heading).toLowerCase();
  if (text === '' || text.length > 40) return 'none';
  const found = (['pct', 'weight', 'kind', 'name'] as const).find((role) =>
    HEADINGS[role].test(text),
  );
  return found ?? 'none';
};

/** The unit in a heading such as "weight (kg)"; g where none is named. */
function unitIn(heading: Cell | undefined): WeightUnit {
  for (const word of textOf(heading)
    .toLowerCase()
    .split(/[^a-z]+/)) {
    const unit = unitOf(word);
    if (unit !== null) return unit;
  }
  return 'g';
}

/** Each role but `none` once: the first column that claims it. */
const once = (roles: readonly ColumnRole[]): ColumnRole[] =>
  roles.map((role, i) => (roles.indexOf(role) === i ? role : 'none'));

/** A sheet without headings: names stand where most texts are, numbers beside them. */
function byContent(table: Table, width: number): Columns {
  const count = (column: number, is: (cell: Cell | undefined) => boolean): number =>
    table.filter((row) => is(row[column])).length;
  const texts = Array.from({ length: width }, (_, i) =>
    count(i, (cell) => textOf(cell) !== '' && readAmount(cell, 'point') === null),
  );
  const name = texts.indexOf(Math.max(...texts));
  const roles = Array.from({ length: width }, (_, i): ColumnRole => {
    if (i === name) return 'name';
    const numbers = count(i, (cell) => readAmount(cell, 'point') !== null);
    if (numbers * 2 < table.length) return 'none';
    const signs = count(i, (cell) => readAmount(cell, 'point')?.unit === '%');
    const bare = table.map((row) => readAmount(row[i], 'point')?.value ?? 0);
    return signs > 0 || (Math.max(...bare) <= 100 && bare.includes(100)) ? 'pct' : 'weight';
  });
  return { roles: once(roles), from: 0, unit: 'g' };
}

/**
 * What each column of a sheet seems to be: by the first row of headings that names two of them, one of
 * them a number's; where there is none, by what stands in the columns. A guess, for the baker to mend.
 */
export function guessColumns(table: Table): Columns {
  const width = Math.max(1, ...table.map((row) => row.length));
  for (const [i, row] of table.slice(0, HEADING_ROWS).entries()) {
    const roles = once(Array.from({ length: width }, (_, c) => roleOf(row[c])));
    const named = roles.filter((role) => role !== 'none');
    if (named.length < 2 || !named.some((role) => role === 'pct' || role === 'weight')) continue;
    // A heading that is none of ours over the names: they are the first column then.
    if (!roles.includes('name') && roles[0] === 'none') roles[0] = 'name';
    return { roles, from: i + 1, unit: unitIn(row[roles.indexOf('weight')]) };
  }
  return byContent(table, width);
}

const TURN: readonly ColumnRole[] = ['name', 'pct', 'weight', 'kind', 'none'];

/** A column made the next thing it may be; whatever else was that is nothing then. */
export function turnColumn(columns: Columns, column: number): Columns {
  const next = TURN[(TURN.indexOf(columns.roles[column] ?? 'none') + 1) % TURN.length]!;
  const roles = columns.roles.map((role, i) =>
    i === column ? next : role === next && next !== 'none' ? 'none' : role,
  );
  return { ...columns, roles };
}
