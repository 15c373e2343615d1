import type { Formula } from './formula.ts';

/**
 * Filling as a share of the dough before it goes in, 0–1. Source: arithmetic; 10–20 % is the
 * trade's usual (San Francisco Baking Institute, sfbi.com/inclusions-in-bread.html).
 *
 * @example
 * fillingShare({ hydration: 75, salt: 2, fillings: [{ pct: 35.4 }] }) // → 0.2
 */
export function fillingShare(
  formula: Pick<Formula, 'hydration' | 'salt'> & {
    readonly fillings: readonly { readonly pct: number }[];
  },
): number {
  const filling = formula.fillings.reduce((sum, { pct }) => sum + pct, 0);
  return filling / (100 + formula.hydration + formula.salt);
}
