import type { Grams } from '../units.ts';
import { amounts, type Amounts } from './amounts.ts';
import { doughToMix, PROCESS_LOSS } from './dough-to-mix.ts';
import type { Formula } from './formula.ts';
import { laterShare } from './later-share.ts';

/**
 * What `loaves` pieces of `piece` g take on the scale, exact grams: 2 % process loss on all but a filling
 * that goes in after the bowl.
 * Source: `doughToMix`, `laterShare`, `amounts`. Failure: as `amounts`.
 */
export function mixedAmounts(formula: Formula, loaves: number, piece: Grams): Amounts {
  const later = laterShare(formula);
  const dough = doughToMix(loaves, piece, PROCESS_LOSS, later);
  return amounts(formula, dough, later > 0 ? PROCESS_LOSS : 0);
}
