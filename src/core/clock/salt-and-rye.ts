/**
 * Factor on the dough's rate for salt and rye: (1 − 0.06·S)·(1 + 0.40·r), S the salt in % of flour
 * that is in the dough NOW (none before it goes in), r the rye share of flour, 0–1. Never below 0.
 * Source: both constants judgement; no measurement behind them.
 *
 * @example
 * saltAndRye(1.8, 0.15) // → 0.94552
 */
export function saltAndRye(salt: number, rye: number): number {
  return Math.max(0, 1 - 0.06 * salt) * (1 + 0.4 * rye);
}
