/** Most CO₂ a dough makes, in dough volumes, and its rate of growth: fitted to bakers' usual times. */
export const GAS = 3.2;
export const GROWTH = 0.54;

/**
 * CO₂ made, in dough volumes, after growth m from a prefermented share p (0–1):
 * G = 3.2·ln(1 + p·(e^{0.54m} − 1)), the exact integral of logistic growth. m ≥ 0.
 * Source: constants fitted to bakers' usual times (common practice, no source).
 *
 * @example
 * gasMade(4, 0.0826) // → 1.5706
 */
export function gasMade(m: number, p: number): number {
  const growth = GROWTH * m;
  // e^700 is near the largest number there is; the 1 is long lost by then
  return growth < 700 ? GAS * Math.log1p(p * Math.expm1(growth)) : GAS * (growth + Math.log(p));
}

/**
 * Growth m that makes `gas` dough volumes of CO₂, the inverse of `gasMade`:
 * m = ln(1 + (e^{G/3.2} − 1)/p)/0.54. p above 0.
 *
 * @example
 * growthForGas(1.5706, 0.0826) // → 4
 */
export function growthForGas(gas: number, p: number): number {
  return Math.log1p(Math.expm1(gas / GAS) / p) / GROWTH;
}
