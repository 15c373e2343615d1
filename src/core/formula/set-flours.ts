import { unread } from './allergens.ts';
import type { Flour, Formula } from './formula.ts';
import { fromBowl, sumOf, toBowl, type Percent } from './in-bowl-percent.ts';
import { readFormula } from './read-formula.ts';

/** What a flour that is added begins with, % of the flour its baker counts by. Judgement. */
export const FLOUR_BEGINS = 10;
/** As many as a reader of formulas takes. */
export const MOST_FLOURS = 8;

/** Parts that sum to `sum`, each as large beside the others as it was; the last bits make none of them more. */
const sharing = <T extends Percent>(parts: readonly T[], sum: number): T[] => {
  const all = sumOf(parts);
  return parts.map((part) => ({ ...part, pct: Math.min(sum, (part.pct * sum) / all) }));
};

/**
 * The formula with another flour at a tenth; the others give way, each by its share, so that all are 100:
 * of all flour, or of the bowl's flour with the levain left as it is, as the formula is counted.
 * Null where it has eight, or where another's share would be under what a formula holds.
 * Source: arithmetic.
 */
export function addFlour(formula: Formula, flour: Omit<Flour, 'pct'>): Formula | null {
  const { flours } = formula;
  if (flours.length >= MOST_FLOURS) return null;
  const added: Flour = { ...flour, pct: FLOUR_BEGINS };
  if (formula.convention !== 'bowl') {
    const shared = [...sharing(flours, 100 - FLOUR_BEGINS), added];
    return readFormula({ ...formula, flours: shared }).formula;
  }
  const sheet = toBowl(formula);
  const bowl = [...sharing(sheet.flours, 100 - FLOUR_BEGINS), added];
  return fromBowl({ ...formula, flours: [...flours, added] }, { ...sheet, flours: bowl }).formula;
}

/**
 * The formula without one of its flours; the others take up its share, each by its own, so that all are
 * 100. So do those of the levain's own mix; one that was fed that flour alone is fed the largest left.
 * Null for the last flour, and where no such formula can be.
 * Source: arithmetic.
 */
export function dropFlour(formula: Formula, id: string): Formula | null {
  const without = <T extends Percent>(parts: readonly T[]): T[] =>
    parts.filter((part) => part.id !== id);
  const flours = without(formula.flours);
  if (flours.length === 0) return null;
  if (formula.convention !== 'bowl') {
    const { flours: own, ...plain } = formula.levain;
    const mix = own ? without(own) : [];
    const levain = mix.length > 0 ? { ...plain, flours: sharing(mix, 100) } : plain;
    return readFormula({ ...formula, flours: sharing(flours, 100), levain }).formula;
  }
  const sheet = toBowl(formula);
  const bowl = without(sheet.flours);
  // What is left may be in the levain alone: then there is nothing to fill the bowl with.
  if (!(sumOf(bowl) > 0)) return null;
  const mix = without(sheet.levainFlours);
  const largest = bowl.reduce((best, one) => (one.pct > best.pct ? one : best));
  return fromBowl(
    { ...formula, flours },
    {
      ...sheet,
      flours: sharing(bowl, 100),
      levainFlours: mix.length > 0 ? sharing(mix, 100) : [{ id: largest.id, pct: 100 }],
    },
  ).formula;
}

/** A flour by another name or of another grain: its old packet says nothing of it any more. */
export const changeFlour = (
  formula: Formula,
  id: string,
  change: Partial<Pick<Flour, 'name' | 'grain'>>,
): Formula => ({
  ...formula,
  flours: formula.flours.map((one) => (one.id === id ? { ...unread(one), ...change } : one)),
});
