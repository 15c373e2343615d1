import { Inflate } from 'fflate';

/** Deflate makes at most 1,032 of one byte: so much is looked at before the count is taken again. */
const BITE = 8_192;

/**
 * Inflates no more than `most` bytes; null where there would be more, or where the data is broken. What
 * a file says of its own size is never asked.
 */
export function inflateWithin(
  data: Uint8Array,
  most: number,
  dictionary?: Uint8Array,
): Uint8Array | null {
  const parts: Uint8Array[] = [];
  let size = 0;
  const inflate = new Inflate(dictionary ? { dictionary } : {}, (part) => {
    size += part.length;
    if (size <= most) parts.push(part);
  });
  try {
    for (let at = 0; at < data.length && size <= most; at += BITE) {
      inflate.push(data.subarray(at, at + BITE), at + BITE >= data.length);
    }
  } catch {
    return null;
  }
  if (size > most) return null;
  const whole = new Uint8Array(size);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
