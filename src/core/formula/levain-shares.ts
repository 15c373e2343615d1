import type { Flour } from './formula.ts';

/**
 * Which flours the levain is made of: for each flour, in the order given, its part of total flour
 * (0–1) that goes into the levain. The largest flour first; another only when that one is used up
 * (judgement: a home levain is fed from one bag). The parts sum to `pff`.
 *
 * @example
 * levainShares([{ pct: 85 }, { pct: 15 }], 0.09) // → [0.09, 0]
 */
export function levainShares(
  flours: readonly Pick<Flour, 'pct'>[],
  pff: number,
): readonly number[] {
  const shares = flours.map(() => 0);
  let left = pff;
  const largestFirst = flours
    .map((flour, i) => ({ i, share: flour.pct / 100 }))
    .sort((a, b) => b.share - a.share || a.i - b.i);
  for (const { i, share } of largestFirst) {
    const taken = Math.min(share, left);
    shares[i] = taken;
    left -= taken;
  }
  return shares;
}
