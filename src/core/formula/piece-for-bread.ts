import type { Grams } from '../units.ts';
import { bakeLoss } from './bake-loss.ts';

/** A baked loaf that may be asked for, g: pieces of 150 to 2500 g of dough. Judgement. */
export const BREAD = { least: 130, most: 2100 } as const;
/** No oven takes more, 0–1. */
const MOST_LOSS = 0.35;

/**
 * Dough weight of a piece, grams, that bakes to `bread` grams: unit = baked/(1 − bake loss). The
 * loss depends on the dough's own weight, so the answer is found by bisection, to 0.01 g. `loss`: the
 * share that a piece loses, 0–0.35, where this kitchen's own is known; its loaves must come out the
 * heavier the heavier their dough.
 * Source: arithmetic over `bakeLoss`. `bread` from 0 to 10 kg.
 *
 * @example
 * pieceForBread(783) // → 900
 * pieceForBread(765, () => 0.15) // → 900
 */
export function pieceForBread(bread: Grams, loss: (piece: Grams) => number = bakeLoss): Grams {
  let low = bread;
  let high = bread / (1 - MOST_LOSS);
  while (high - low > 0.01) {
    const middle = (low + high) / 2;
    if (middle * (1 - loss(middle)) < bread) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
