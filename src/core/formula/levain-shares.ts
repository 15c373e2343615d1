import type { Flour, Formula } from './formula.ts';

/**
 * Which flours the levain is made of: for each flour, in the order given, its part of total flour
 * (0–1) that goes into the levain; the parts sum to `pff`. Where the levain has a mix of its own it
 * is that, and may ask for more of a flour than the formula has. Else the largest flour first,
 * another only when that one is used up (judgement: a home levain is fed from one bag).
 *
 * @example
 * levainShares([{ id: 'wheat', pct: 85 }, { id: 'rye', pct: 15 }], { pff: 0.09 }) // → [0.09, 0]
 * levainShares([{ id: 'wheat', pct: 85 }, { id: 'rye', pct: 15 }], { pff: 0.1, flours: [{ id: 'rye', pct: 100 }] }) // → [0, 0.1]
 */
export function levainShares(
  flours: readonly Pick<Flour, 'id' | 'pct'>[],
  { pff, flours: own }: Pick<Formula['levain'], 'pff' | 'flours'>,
): readonly number[] {
  if (own) return flours.map(({ id }) => (pff * (own.find((f) => f.id === id)?.pct ?? 0)) / 100);
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
