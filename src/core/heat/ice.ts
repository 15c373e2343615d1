import type { Celsius, Grams } from '../units.ts';
import { HEAT, MELTING } from './heats.ts';

/**
 * Grams of ice that replace as much of `water` to bring it from the tap's temperature to `wanted`.
 * 0 where the tap is cold enough; never more than all of the water. Ice at −18 °C unless said.
 * Source: heat balance; Koerner's table agrees within 0.002 lb a pound.
 *
 * @example
 * iceFor({ water: 40_000, tap: 20, wanted: 10, ice: 0 }) // → 4007.66
 */
export function iceFor({
  water,
  tap,
  wanted,
  ice = -18,
}: {
  readonly water: Grams;
  readonly tap: Celsius;
  readonly wanted: Celsius;
  readonly ice?: Celsius;
}): Grams {
  if (wanted >= tap) return 0;
  const melted = MELTING + HEAT.water * tap + HEAT.ice * (0 - ice);
  return Math.min(water, (water * HEAT.water * (tap - wanted)) / melted);
}
