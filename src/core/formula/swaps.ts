import { showAllergens } from '../speech/show-allergen.ts';
import { withPercent } from './live-percent.ts';
import type { Filling, Formula } from './formula.ts';
import type { Notice } from './notice.ts';
import { readFormula } from './read-formula.ts';

/**
 * Dried herbs for fresh by weight: half. Common practice, no source. In print it is one part dried
 * for three fresh by volume, which says nothing of weight.
 */
export const DRIED_FOR_FRESH = 0.5;

export type Swapped =
  | { readonly formula: Formula; readonly told: Notice; readonly reason?: never }
  | { readonly formula: null; readonly reason: Notice };

const find = (formula: Formula, id: string): Filling | undefined =>
  formula.fillings.find((filling) => filling.id === id);

const unknown = (id: string): Swapped => ({
  formula: null,
  reason: { key: 'lineUnknown', values: { line: id } },
});

const put = (formula: Formula, id: string, by: Filling, told: Notice): Swapped => {
  const read = readFormula({
    ...formula,
    fillings: formula.fillings.map((filling) => (filling.id === id ? by : filling)),
  });
  return read.formula
    ? { formula: read.formula, told }
    : { formula: null, reason: { key: 'formulaUnreadable', values: { ...read.reason } } };
};

/**
 * One filling for another, as much of it by weight: walnuts for hazelnuts. What is known of the new
 * one comes with it, its allergens too, and is told.
 *
 * No answer, with a reason: `lineUnknown` (line), or `formulaUnreadable` (path, expected, got).
 */
export function swapFilling(formula: Formula, id: string, other: Omit<Filling, 'pct'>): Swapped {
  const was = find(formula, id);
  if (was === undefined) return unknown(id);
  const told: Notice =
    other.allergens.length > 0
      ? {
          key: 'swappedAllergens',
          values: { name: other.name, was: was.name, allergens: showAllergens(other.allergens) },
        }
      : { key: 'swapped', values: { name: other.name, was: was.name } };
  return put(formula, id, { ...other, pct: was.pct }, told);
}

/**
 * Dried herbs for fresh ones, or fresh for dried: half or twice by weight (common practice, no
 * source). `other` says what the new ones are called and how they keep.
 *
 * No answer, with a reason: as `swapFilling`.
 */
export function swapHerbs(
  formula: Formula,
  id: string,
  { to, other }: { readonly to: 'dried' | 'fresh'; readonly other: Omit<Filling, 'pct'> },
): Swapped {
  const was = find(formula, id);
  if (was === undefined) return unknown(id);
  const pct = to === 'dried' ? was.pct * DRIED_FOR_FRESH : was.pct / DRIED_FOR_FRESH;
  const swapped = swapFilling(formula, id, other);
  if (swapped.formula === null) return swapped;
  const scaled = withPercent(swapped.formula, `filling:${other.id}`, pct);
  if (scaled.formula === null) return { formula: null, reason: scaled.reason };
  const key = to === 'dried' ? 'herbsDried' : 'herbsFresh';
  return { formula: scaled.formula, told: { key, values: { name: other.name, pct } } };
}
