import type { Grams } from '../units.ts';
import { bakeLoss } from './bake-loss.ts';

/**
 * Dough weight of a piece, grams, that bakes to `bread` grams: unit = baked/(1 − bake loss). The
 * loss depends on the dough's own weight, so the answer is found by bisection, to 0.01 g.
 * Source: arithmetic over `bakeLoss`. `bread` from 0 to 10 kg.
 *
 * @example
 * pieceForBread(783) // → 900
 */
export function pieceForBread(bread: Grams): Grams {
  let low = bread;
  let high = bread / (1 - 0.16);
  while (high - low > 0.01) {
    const middle = (low + high) / 2;
    if (middle * (1 - bakeLoss(middle)) < bread) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
