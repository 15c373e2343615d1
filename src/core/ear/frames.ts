/** What is heard, moment by moment: `count` rows of `size` numbers, one after the other. */
export interface Frames {
  readonly count: number;
  readonly size: number;
  readonly data: Float32Array<ArrayBuffer>;
}

/** Each column about zero with a spread of one over the whole: a room's and a microphone's own colour is gone. */
export function levelled({ count, size, data }: Frames): Frames {
  const made = new Float32Array(data.length);
  for (let column = 0; column < size; column += 1) {
    let sum = 0;
    let squares = 0;
    for (let n = 0; n < count; n += 1) {
      const value = data[n * size + column]!;
      sum += value;
      squares += value * value;
    }
    const mean = sum / Math.max(1, count);
    const spread = Math.sqrt(Math.max(0, squares / Math.max(1, count) - mean * mean)) || 1;
    for (let n = 0; n < count; n += 1)
      made[n * size + column] = (data[n * size + column]! - mean) / spread;
  }
  return { count, size, data: made };
}

/** Each row as long as one: what counts is its direction, not how loud it was. */
export function directed({ count, size, data }: Frames): Frames {
  const made = new Float32Array(data.length);
  for (let n = 0; n < count; n += 1) {
    let squares = 0;
    for (let i = n * size; i < (n + 1) * size; i += 1) squares += data[i]! * data[i]!;
    const long = Math.sqrt(squares) || 1;
    for (let i = n * size; i < (n + 1) * size; i += 1) made[i] = data[i]! / long;
  }
  return { count, size, data: made };
}

/** So far before and behind, frames, it is looked at where a sound goes. */
const REACH = 2;
/** How much of the first column counts, which is loudness, and of where a sound goes. Tried on made voices. */
const LOUDNESS = 0.5;
const MOVES = 1.2;

/** Beside each column where it goes: a sound is known by that as much as by where it is. */
export function moving({ count, size, data }: Frames): Frames {
  const made = new Float32Array(count * size * 2);
  for (let n = 0; n < count; n += 1) {
    const before = Math.max(0, n - REACH) * size;
    const behind = Math.min(count - 1, n + REACH) * size;
    for (let i = 0; i < size; i += 1) {
      const at = n * size * 2 + i;
      made[at] = data[n * size + i]! * (i === 0 ? LOUDNESS : 1);
      made[at + size] = (data[behind + i]! - data[before + i]!) * MOVES;
    }
  }
  return { count, size: size * 2, data: made };
}

/** Every two rows as their mean: a phrase in half as many. */
export function halved({ count, size, data }: Frames): Frames {
  const half = count >> 1;
  const made = new Float32Array(half * size);
  for (let n = 0; n < half; n += 1)
    for (let i = 0; i < size; i += 1)
      made[n * size + i] = (data[2 * n * size + i]! + data[(2 * n + 1) * size + i]!) / 2;
  return { count: half, size, data: made };
}
