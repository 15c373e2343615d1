import { sayNumber } from './numbers.ts';
import type { Minutes } from '../units.ts';

const split = (minutes: Minutes): { h: number; m: number } => {
  const all = Math.round(minutes);
  if (!(all >= 0 && all < 6000))
    throw new Error(`A length must be from 0 to 5999 minutes, not ${minutes}.`);
  return { h: Math.floor(all / 60), m: all % 60 };
};

/**
 * A length of time as it is shown, to the minute.
 *
 * @throws Error `A length must be from 0 to 5999 minutes, not x.`
 * @example showLength(72) // '1 h 12'
 * @example showLength(20) // '20 min'
 */
export function showLength(minutes: Minutes): string {
  const { h, m } = split(minutes);
  if (h === 0) return `${m} min`;
  return m === 0 ? `${h} h` : `${h} h ${String(m).padStart(2, '0')}`;
}

/**
 * A length of time as it is said.
 *
 * @throws Error `A length must be from 0 to 5999 minutes, not x.`
 * @example sayLength(72) // 'one hour twelve minutes'
 */
export function sayLength(minutes: Minutes): string {
  const { h, m } = split(minutes);
  if (h === 0) return sayNumber(m, 'minute');
  return m === 0 ? sayNumber(h, 'hour') : `${sayNumber(h, 'hour')} ${sayNumber(m, 'minute')}`;
}
