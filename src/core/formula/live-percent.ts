import type { Grams } from '../units.ts';
import { keptPct } from './filling-basis.ts';
import type { Formula } from './formula.ts';
import type { Notice } from './notice.ts';
import { readFormula } from './read-formula.ts';

/** A line of a formula that has a percent: a flour or a filling by its id, or one of the three. */
export type PercentLine = 'water' | 'salt' | 'levain' | `flour:${string}` | `filling:${string}`;

/**
 * Grams in % of all flour. Never back from rounded percentages: the grams that were read are exact.
 *
 * @example
 * percentOf(15, 600) // → 2.5
 */
export const percentOf = (grams: Grams, totalFlour: Grams): number => (grams / totalFlour) * 100;

export type Changed =
  | { readonly formula: Formula; readonly reason?: never }
  | { readonly formula: null; readonly reason: Notice };

/** One flour at `pct`, the others sharing what is left in the proportions they had. */
const flourAt = ({ flours }: Formula, id: string, pct: number): Formula['flours'] => {
  const others = flours.reduce((sum, flour) => sum + (flour.id === id ? 0 : flour.pct), 0);
  return flours.map((flour) => ({
    ...flour,
    pct: flour.id === id ? pct : others > 0 ? (flour.pct / others) * (100 - pct) : flour.pct,
  }));
};

const changed = (formula: Formula, line: PercentLine, pct: number): unknown => {
  if (line === 'water') return { ...formula, hydration: pct };
  if (line === 'salt') return { ...formula, salt: pct };
  if (line === 'levain') {
    const { levain } = formula;
    return { ...formula, levain: { ...levain, pff: pct / 100 / (1 + levain.hydration) } };
  }
  const [kind, id] = [line.slice(0, line.indexOf(':')), line.slice(line.indexOf(':') + 1)];
  const lines = kind === 'flour' ? formula.flours : formula.fillings;
  if (lines.every((one) => one.id !== id)) return null;
  if (kind === 'flour') return { ...formula, flours: flourAt(formula, id, pct) };
  return {
    ...formula,
    fillings: formula.fillings.map((one) => (one.id === id ? { ...one, pct } : one)),
  };
};

/**
 * A formula with one line at another percent of all flour; `water` is all water, `levain` its whole
 * weight, which moves the prefermented share and leaves all flour and all water. A flour's change is
 * taken from the others, as far as each of them had its part.
 *
 * No answer, with a reason: `lineUnknown` (line), or `formulaUnreadable` (path, expected, got).
 */
export function withPercent(formula: Formula, line: PercentLine, pct: number): Changed {
  const next = changed(formula, line, pct);
  if (next === null) return { formula: null, reason: { key: 'lineUnknown', values: { line } } };
  const read = readFormula(next);
  return read.formula
    ? { formula: read.formula }
    : { formula: null, reason: { key: 'formulaUnreadable', values: { ...read.reason } } };
}

/** The same by what was put on the scale, in a dough of `totalFlour` g of flour. */
export const withGrams = (
  formula: Formula,
  line: PercentLine,
  grams: Grams,
  totalFlour: Grams,
): Changed => withPercent(formula, line, percentOf(grams, totalFlour));

/** The same for a filling in the percent its baker counts it in: of flour, or of the dough. */
export const withCounted = (formula: Formula, filling: string, counted: number): Changed =>
  withPercent(formula, `filling:${filling}`, keptPct(formula, counted));
