import type { Frames } from './frames.ts';

const apart = (a: Frames, n: number, b: Frames, m: number): number => {
  let sum = 0;
  for (let i = 0, p = n * a.size, q = m * b.size; i < a.size; i += 1, p += 1, q += 1) {
    const by = a.data[p]! - b.data[q]!;
    sum += by * by;
  }
  return Math.sqrt(sum);
};

/** Spoken in another haste by more than this, it is not the same phrase. Judgement. */
const MOST_HASTE = 2.2;

/**
 * How far two sayings are apart where each is stretched to fit the other: dynamic time warping with steps
 * that weigh the same both ways and a band about the diagonal (Sakoe and Chiba, 1978), a mean Euclidean
 * distance a frame. Infinity where one is empty or more than twice as long as the other.
 *
 * @throws where their frames are not of one size
 */
export function warpDistance(a: Frames, b: Frames): number {
  if (a.size !== b.size) throw new Error('Sayings of two kinds of frame cannot be compared.');
  // The band goes along the longer one: which of them is asked for is all the same.
  if (a.count < b.count) return warpDistance(b, a);
  if (b.count === 0 || a.count > b.count * MOST_HASTE) return Infinity;
  const band = Math.max(a.count - b.count, Math.ceil(a.count / 4)) + 1;
  let last = new Float64Array(b.count + 1).fill(Infinity);
  let row = new Float64Array(b.count + 1);
  last[0] = 0;
  for (let n = 1; n <= a.count; n += 1) {
    row.fill(Infinity);
    const middle = (n * b.count) / a.count;
    const first = Math.max(1, Math.floor(middle - band));
    const end = Math.min(b.count, Math.ceil(middle + band));
    for (let m = first; m <= end; m += 1) {
      const cost = apart(a, n - 1, b, m - 1);
      row[m] = Math.min(last[m]! + cost, row[m - 1]! + cost, last[m - 1]! + 2 * cost);
    }
    [last, row] = [row, last];
  }
  return last[b.count]! / (a.count + b.count);
}
