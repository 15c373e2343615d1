import type { Grams } from '../units.ts';

/** Dough weight of a piece (g) against the share lost in the oven; linear between. Practice. */
const TABLE = [
  [400, 0.16],
  [500, 0.13],
  [900, 0.13],
  [1200, 0.11],
] as const;

/**
 * Share of a piece's dough weight that leaves it in the oven, 0–1: up to 400 g .16, 500–900 g .13,
 * from 1.2 kg .11, linear between. Source: common practice, no source; to be learned from weighings.
 * Failure: none; outside the table its nearest end.
 *
 * @example
 * bakeLoss(450) // → 0.145
 */
export function bakeLoss(piece: Grams): number {
  let [before, lossBefore]: readonly [number, number] = TABLE[0];
  for (const [at, loss] of TABLE) {
    if (piece <= at) {
      const share = at === before ? 1 : Math.max(0, (piece - before) / (at - before));
      return lossBefore + (loss - lossBefore) * share;
    }
    [before, lossBefore] = [at, loss];
  }
  return lossBefore;
}
