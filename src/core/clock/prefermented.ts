/**
 * Prefermented share of flour p, 0–1, from a levain given in % of the dough's other flour at
 * hydration `hydration` %: f = levain%/(1 + hyd/100), p = f/(100 + f). Equals PFF.
 * Source: arithmetic.
 *
 * @example
 * prefermented(18, 100) // → 0.08257
 */
export function prefermented(levain: number, hydration: number): number {
  const flour = levain / (1 + hydration / 100);
  return flour / (100 + flour);
}
