import type { Grams } from '../units.ts';
import { amounts, type Amounts } from './amounts.ts';
import { doughPct } from './dough-pct.ts';
import { doughToMix, PROCESS_LOSS } from './dough-to-mix.ts';
import type { Formula } from './formula.ts';
import { laterShare } from './later-share.ts';

type Of = Parameters<typeof laterShare>[0];

/** What bowl and hands take before the filling goes in, 0–1; 0 where it goes in first, or there is none. */
const lossBefore = (formula: Of): number => (laterShare(formula) > 0 ? PROCESS_LOSS : 0);

/**
 * What comes on the scale for a dough, in % of its flour: all of it, less the 2 % of the filling that
 * needs no loss made up for.
 *
 * @example
 * scalePct({ hydration: 78, salt: 2, fillings: [{ pct: 20 }], process: { shaping: 'round' } }) // → 199.6
 */
export const scalePct = (formula: Of): number =>
  doughPct(formula) * (1 - laterShare(formula) * PROCESS_LOSS);

/** Grams that `loaves` pieces of `piece` g take on the scale: 2 % loss on all but a filling that goes in later. */
export const doughFor = (formula: Of, loaves: number, piece: Grams): Grams =>
  doughToMix(loaves, piece, PROCESS_LOSS, laterShare(formula));

/** The piece that `loaves` of them make of so many grams off the scale: `doughFor`, the other way. */
export const pieceFrom = (formula: Of, dough: Grams, loaves: number): Grams =>
  dough / doughFor(formula, loaves, 1);

/** A dough of so many grams off the scale taken apart as it is weighed. As `amounts`. */
export const weighedAmounts = (formula: Formula, dough: Grams): Amounts =>
  amounts(formula, dough, lossBefore(formula));

/**
 * What `loaves` pieces of `piece` g take on the scale, exact grams.
 * Source: `doughFor`, `amounts`. Failure: as `amounts`.
 */
export const mixedAmounts = (formula: Formula, loaves: number, piece: Grams): Amounts =>
  weighedAmounts(formula, doughFor(formula, loaves, piece));
