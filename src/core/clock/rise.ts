import type { Celsius } from '../units.ts';
import { gasDissolved, KELVIN, ROOM_KELVIN } from './gas-dissolved.ts';
import { gasMade, growthForGas } from './gas-made.ts';

/** Gas lost or held otherwise, in dough volumes. From memory, unverified. */
const HELD = 0.08;

/**
 * Rise of the dough as a share of its volume (1 = doubled) after growth m from a prefermented share
 * p at `celsius`: b = G − Cs − 0.08; V = (K/298.15)·(b + √(b² + 0.32·G))/2. m ≥ 0, p above 0.
 * Source: the dough clock; 0.08 from memory. Above 1.1 the model extrapolates.
 *
 * @example
 * rise(4, 0.0826, 26) // → 1.14006
 */
export function rise(m: number, p: number, celsius: Celsius): number {
  const gas = gasMade(m, p);
  const b = gas - gasDissolved(celsius) - HELD;
  const root = Math.sqrt(b * b + 4 * HELD * gas);
  // (b + root)/2 without losing digits where b is well below zero
  const free = b < 0 ? (2 * HELD * gas) / (root - b) : (b + root) / 2;
  return ((celsius + KELVIN) / ROOM_KELVIN) * free;
}

/**
 * Growth m at which the dough has risen by `share` of its volume (0.9 = 90 %), the inverse of
 * `rise`: x = V·298.15/K; G = x + Cs·x/(x + 0.08). `share` ≥ 0, p above 0.
 *
 * @example
 * growthForRise(1.14006, 0.0826, 26) // → 4
 */
export function growthForRise(share: number, p: number, celsius: Celsius): number {
  const x = (share * ROOM_KELVIN) / (celsius + KELVIN);
  const gas = x + (gasDissolved(celsius) * x) / (x + HELD);
  return growthForGas(gas, p);
}
