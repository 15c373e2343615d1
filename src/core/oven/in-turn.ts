import type { Turn } from '../records/position.ts';

const RANK: Readonly<Record<Turn, number>> = { flat: 0, first: 1, later: 3 };

/**
 * Loaves in the order they go in: one that bakes flat now, those said to go first, then as they came,
 * then those left for later; each kind in the order given.
 *
 * @example
 * inTurn(['a', 'b', 'c'], { a: 'later', c: 'first' }) // → ['c', 'b', 'a']
 */
export function inTurn(
  loaves: readonly string[],
  turns: Readonly<Record<string, Turn>> = {},
): readonly string[] {
  const rank = (loaf: string): number => {
    const turn = turns[loaf];
    return turn === undefined ? 2 : RANK[turn];
  };
  return loaves.toSorted((a, b) => rank(a) - rank(b));
}
