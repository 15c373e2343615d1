import { soakPct } from './dough-pct.ts';
import type { Formula } from './formula.ts';
import { levainShares } from './levain-shares.ts';

/** One line of two formulas, each in % of its total flour; null where a formula has no such line. */
export interface Compared {
  /** `flour:id`, `water`, `salt`, `levain`, `levainFlour:id`, `filling:id`, `soak:id`. */
  readonly line: string;
  /** The flour's or filling's own name; null where the line is one that every formula has. */
  readonly name: string | null;
  readonly was: number | null;
  readonly is: number | null;
  /** `is` − `was`, what is missing counted as 0. */
  readonly change: number;
}

type Sheet = readonly {
  readonly line: string;
  readonly name: string | null;
  readonly pct: number;
}[];

/** A formula's lines in % of total flour, in the order of the work. */
const sheetOf = (formula: Formula): Sheet => {
  const { flours, hydration, salt, levain, fillings } = formula;
  const shares = levainShares(flours, levain);
  return [
    ...flours.map(({ id, name, pct }) => ({ line: `flour:${id}`, name, pct })),
    { line: 'water', name: null, pct: hydration },
    { line: 'levain', name: null, pct: 100 * levain.pff * (1 + levain.hydration) },
    ...flours.flatMap(({ id, name }, i) => {
      const pct = 100 * (shares[i] ?? 0);
      return pct > 0 ? [{ line: `levainFlour:${id}`, name, pct }] : [];
    }),
    { line: 'salt', name: null, pct: salt },
    ...fillings.flatMap((filling) => [
      { line: `filling:${filling.id}`, name: filling.name, pct: filling.pct },
      ...(filling.soak
        ? [{ line: `soak:${filling.id}`, name: filling.name, pct: soakPct(filling) }]
        : []),
    ]),
  ];
};

/**
 * Two formulas beside each other, line by line, in % of total flour. Lines are the same by their id;
 * those of the first come first, what only the second has stands behind.
 * Source: arithmetic. Failure: none.
 */
export function compareFormulas(before: Formula, after: Formula): readonly Compared[] {
  const [first, second] = [sheetOf(before), sheetOf(after)];
  const find = (sheet: Sheet, line: string): number | null =>
    sheet.find((one) => one.line === line)?.pct ?? null;
  const added = second.filter(({ line }) => find(first, line) === null);
  return [...first, ...added].map(({ line, name }) => {
    const [was, is] = [find(first, line), find(second, line)];
    return { line, name, was, is, change: (is ?? 0) - (was ?? 0) };
  });
}
