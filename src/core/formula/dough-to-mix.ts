import type { Grams } from '../units.ts';

/** Share of the dough left on hands, bowl and board: 2 % (Rumford measured 2.03 %). */
export const PROCESS_LOSS = 0.02;

/**
 * Dough to mix, grams, for `pieces` pieces of `piece` grams: n·unit/(1 − loss), loss 0–1. `later`: the
 * share of a piece (0–1) that goes in after the bowl, and of which nothing is lost there.
 * Source: arithmetic; the default loss is Rumford's, rounded.
 *
 * @example
 * doughToMix(24, 900) // → 22040.8
 * doughToMix(4, 1180, 0.02, 180 / 1180) // → 4801.63
 */
export function doughToMix(
  pieces: number,
  piece: Grams,
  loss: number = PROCESS_LOSS,
  later = 0,
): Grams {
  return pieces * piece * ((1 - later) / (1 - loss) + later);
}
