import { doughPct } from './dough-pct.ts';
import type { Formula } from './formula.ts';

/**
 * The share of a piece (0–1) that goes in after bowl and hands had their part of the dough: its
 * fillings with their soakers' water. No way of ours has a filling in at the mix: it is laid on a sheet
 * or folded in at shaping, by the weight, and none of it stays in a bowl. Of a spooned dough it is 0:
 * there the filling is stirred into the whole dough, and what spoon and bowl keep is filled dough.
 * Source: arithmetic; that a filling loses nothing is judgement.
 *
 * @example
 * laterShare({ hydration: 80, salt: 2, fillings: [{ pct: 18.2 }], process: { shaping: 'round' } }) // → 0.0909
 * laterShare({ hydration: 80, salt: 2, fillings: [{ pct: 18.2 }], process: { shaping: 'scoop' } }) // → 0
 */
export function laterShare(
  formula: Parameters<typeof doughPct>[0] & {
    readonly process: Pick<Formula['process'], 'shaping'>;
  },
): number {
  if (formula.process.shaping === 'scoop') return 0;
  const all = doughPct(formula);
  return (all - doughPct({ ...formula, fillings: [] })) / all;
}
