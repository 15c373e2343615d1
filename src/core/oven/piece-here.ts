import { pieceForBread } from '../formula/piece-for-bread.ts';
import type { Formula } from '../formula/formula.ts';
import type { TaughtLoss } from '../records/taught.ts';
import type { Grams } from '../units.ts';
import { lossOf } from './bake-loss-learned.ts';

/**
 * Dough for each loaf, whole grams: the formula's own piece, or (`bread` g of cool loaf) what such a
 * loaf takes by what loaves of its vessel lose in this kitchen.
 * Source: `pieceForBread` over `lossOf`. `bread` from 0 to 10 kg.
 *
 * @example
 * pieceHere({ piece: 900, process: { vessel: 'pot' } }, null, []) // → 900
 * pieceHere({ piece: 900, process: { vessel: 'pot' } }, 700, []) // → 805
 */
export function pieceHere(
  {
    piece,
    process,
  }: { readonly piece: Grams; readonly process: Pick<Formula['process'], 'vessel'> },
  bread: Grams | null,
  weighIns: readonly TaughtLoss[],
): Grams {
  if (bread === null) return piece;
  const alike = weighIns.filter(({ vessel }) => vessel === process.vessel);
  return Math.round(pieceForBread(bread, (grams) => lossOf(grams, alike).mean));
}
