import type { Grams } from '../units.ts';

/** Starter kept back for the next bake, g. Judgement: enough to seed a levain for a home oven. */
export const KEEP_BACK: Grams = 30;

/** Levain left on jar and spoon, share of what is made. Judgement. */
export const LEVAIN_LOSS = 0.05;

/**
 * Levain to make, grams: what the dough needs and what is kept back, with 5 % for jar and spoon.
 * Source: judgement.
 *
 * @example
 * levainToMake(170) // → 210
 */
export function levainToMake(needed: Grams, keepBack: Grams = KEEP_BACK): Grams {
  return (needed + keepBack) * (1 + LEVAIN_LOSS);
}
