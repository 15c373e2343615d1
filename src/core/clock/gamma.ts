import type { Celsius } from '../units.ts';

/** Logarithm once, for a power is slow and the integrals take many. */
const LN_Q10 = Math.log(2.8);

/**
 * Rate of the dough relative to 26 °C: 2.8^((min(T,30) − 26)/10) · clamp(T/10, 0, 1).
 * Nothing happens at 0 °C or below; above 30 °C it stays as at 30.
 * Source: 2.8 fitted to bakers' usual times (common practice, no source); the fade below 10 °C is
 * judgement. From 28 °C up the yeasts part and the rate is in doubt: see `clockDoubt`.
 *
 * @example
 * gamma(24) // → 0.8139
 */
export function gamma(celsius: Celsius): number {
  const fade = Math.min(1, Math.max(0, celsius / 10));
  return Math.exp((LN_Q10 * (Math.min(celsius, 30) - 26)) / 10) * fade;
}

/** Temperatures (°C) where `gamma` bends; integrals are split there. */
export const GAMMA_BENDS: readonly Celsius[] = [0, 10, 30];
