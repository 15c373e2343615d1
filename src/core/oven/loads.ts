import type { Minutes } from '../units.ts';

/**
 * Loads it takes to bake `loaves` loaves in `pots` pots, one loaf a pot: ⌈N/P⌉. Both whole and at
 * least 1. Source: arithmetic.
 *
 * @example
 * loads(24, 2) // → 12
 */
export function loads(loaves: number, pots: number): number {
  return Math.ceil(loaves / pots);
}

/**
 * Oven minutes from switching on to the last loaf out: preheat + loads·bake + (loads − 1)·recovery,
 * loading minutes inside recovery. Source: arithmetic.
 *
 * @example
 * ovenMinutes(12, { preheat: 60, bake: 45, recovery: 10 }) // → 710
 */
export function ovenMinutes(
  count: number,
  minutes: { readonly preheat: Minutes; readonly bake: Minutes; readonly recovery: Minutes },
): Minutes {
  return minutes.preheat + count * minutes.bake + (count - 1) * minutes.recovery;
}
