import { doughPct } from './dough-pct.ts';

/**
 * Filling as a share of the dough before it goes in, 0–1; a soaker's water goes in with it. Source:
 * arithmetic; 10–20 % is the trade's usual (San Francisco Baking Institute,
 * sfbi.com/inclusions-in-bread.html).
 *
 * @example
 * fillingShare({ hydration: 75, salt: 2, fillings: [{ pct: 35.4 }] }) // → 0.2
 */
export function fillingShare(formula: Parameters<typeof doughPct>[0]): number {
  const plain = doughPct({ ...formula, fillings: [] });
  return (doughPct(formula) - plain) / plain;
}
