/** Keys of the number pad. */
export type PadKey = '0' | '1' | '2' | '3' | '4' | '5' | '6' | '7' | '8' | '9' | '.' | 'clear';

/** A reading takes at most this many presses, the point included. */
export const MOST_PRESSES = 6;

/**
 * What stands after one more key. A key that makes no number (a second point, a seventh press) changes
 * nothing.
 * @example typeKey('24', '.') // '24.'
 */
export function typeKey(text: string, key: PadKey): string {
  if (key === 'clear') return '';
  if (text.length >= MOST_PRESSES || (key === '.' && text.includes('.'))) return text;
  return text === '0' && key !== '.' ? key : text + key;
}

/** The number typed, or null while there is none ("" and "."). */
export function numberOf(text: string): number | null {
  return /\d/.test(text) ? Number(text) : null;
}
