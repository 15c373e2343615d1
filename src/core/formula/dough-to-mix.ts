import type { Grams } from '../units.ts';

/** Share of the dough left on hands, bowl and board: 2 % (Rumford measured 2.03 %). */
export const PROCESS_LOSS = 0.02;

/**
 * Dough to mix, grams, for `pieces` pieces of `piece` grams: n·unit/(1 − loss), loss 0–1.
 * Source: arithmetic; the default loss is Rumford's, rounded.
 *
 * @example
 * doughToMix(24, 900) // → 22040.8
 */
export function doughToMix(pieces: number, piece: Grams, loss: number = PROCESS_LOSS): Grams {
  return (pieces * piece) / (1 - loss);
}
