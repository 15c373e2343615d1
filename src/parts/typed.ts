/** Keys of the number pad. */
export type PadKey = '0' | '1' | '2' | '3' | '4' | '5' | '6' | '7' | '8' | '9' | '.' | 'clear';

/** A reading takes at most this many presses, the point included. */
export const MOST_PRESSES = 6;

/**
 * What stands after one more key. A key that makes no number (a second point, a seventh press) changes
 * nothing. After two whole digits, one that would pass `possible` sets the point before itself: no
 * dough has 245 °C, so it saves a press.
 * @example typeKey('24', '.') // '24.'
 * @example typeKey('24', '5', 100) // '24.5'
 */
export function typeKey(text: string, key: PadKey, possible = Number.POSITIVE_INFINITY): string {
  if (key === 'clear') return '';
  if (text.length >= MOST_PRESSES || (key === '.' && text.includes('.'))) return text;
  if (text === '0' && key !== '.') return key;
  const next = text + key;
  const sets = /^\d{2,}$/.test(text) && key !== '.' && Number(next) > possible;
  return sets && text.length + 2 <= MOST_PRESSES ? `${text}.${key}` : next;
}

/** The number typed, or null while there is none ("" and "."). */
export function numberOf(text: string): number | null {
  return /\d/.test(text) ? Number(text) : null;
}
