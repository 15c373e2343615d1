import type { Celsius } from '../units.ts';

/** °C to kelvin. */
export const KELVIN = 273.15;
/** 25 °C in kelvin, where the dough's rise is stated. */
export const ROOM_KELVIN = 298.15;

/**
 * CO₂ held by the dough's water, in dough volumes: 0.476·e^{2400(1/K − 1/298.15)}·K/298.15.
 * Source: 2400 K and the solubility behind 0.476 from Sander 2023, Atmos. Chem. Phys. 23:10901.
 *
 * @example
 * gasDissolved(4) // → 0.814
 */
export function gasDissolved(celsius: Celsius): number {
  const kelvin = celsius + KELVIN;
  return (0.476 * Math.exp(2400 * (1 / kelvin - 1 / ROOM_KELVIN)) * kelvin) / ROOM_KELVIN;
}
