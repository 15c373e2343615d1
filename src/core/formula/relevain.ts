import type { Formula } from './formula.ts';
import type { Notice } from './notice.ts';
import { readFormula } from './read-formula.ts';

/** A formula with another levain, and what that changes on the sheet, % of total flour. */
export interface Relevained {
  readonly formula: Formula;
  /** Weight of the levain before and now: PFF·(1 + h). */
  readonly levain: { readonly before: number; readonly now: number };
  /** Water of the bowl before and now: H − PFF·h. */
  readonly finalWater: { readonly before: number; readonly now: number };
}

export type Relevain =
  (Relevained & { readonly reason?: never }) | { readonly formula: null; readonly reason: Notice };

/**
 * The formula with its levain at another hydration (1.0 is 100 %): total flour, hydration and the
 * prefermented share of flour stay, so the dough is as it was; the levain weighs more or less, and
 * the bowl's water makes up for it. The feed's water follows the levain.
 *
 * No answer, with a reason: `levainTooWet` (short: % of flour that the first water lacks), or
 * `formulaUnreadable` (path, expected, got).
 * Source: L = PFF·F_T·(1 + h), final water = H·F_T − PFF·F_T·h; arithmetic.
 */
export function relevain(formula: Formula, hydration: number): Relevain {
  const { levain, secondWater } = formula;
  const read = readFormula({
    ...formula,
    levain: {
      ...levain,
      hydration,
      feed: { ...levain.feed, water: levain.feed.flour * hydration },
    },
  });
  if (read.formula === null) {
    return { formula: null, reason: { key: 'formulaUnreadable', values: { ...read.reason } } };
  }
  const mass = (h: number): number => 100 * levain.pff * (1 + h);
  const water = (h: number): number => formula.hydration - 100 * levain.pff * h;
  const first = water(hydration) - secondWater * formula.hydration;
  if (first < -1e-9) {
    return { formula: null, reason: { key: 'levainTooWet', values: { short: -first } } };
  }
  return {
    formula: read.formula,
    levain: { before: mass(levain.hydration), now: mass(hydration) },
    finalWater: { before: water(levain.hydration), now: water(hydration) },
  };
}
