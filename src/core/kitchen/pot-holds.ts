import type { Grams } from '../units.ts';
import { POT_LITRES_A_KILO } from './limits.ts';

/**
 * Most dough a pot of so many litres takes, g: a kilo wants 3.3 litres. Judgement.
 *
 * @example
 * potHolds(3.3) // → 1000
 * potHolds(5) // → 1515
 */
export const potHolds = (litres: number): Grams =>
  Math.floor((litres / POT_LITRES_A_KILO) * 1000 + 1e-9);
