import { nameOf } from './measures.ts';
import { sayNumber } from './numbers.ts';
import { twinned } from './tongue.ts';
import type { Minutes } from '../units.ts';

/** Longer than a hundred hours is told in whole days: nobody counts that far in hours. */
const LONG = 6000;
const DAY = 1440;

const split = (minutes: Minutes): { d: number; h: number; m: number } => {
  const all = Math.round(minutes);
  if (!(all >= 0 && all < Infinity))
    throw new Error(`A length must be 0 minutes or more, not ${minutes}.`);
  if (all >= LONG) return { d: Math.round(all / DAY), h: 0, m: 0 };
  return { d: 0, h: Math.floor(all / 60), m: all % 60 };
};

/** The blank does not break: parted after its hours, a length would be read as hours alone. */
const HELD = '\u00a0';

/**
 * A length of time as it is shown: to the minute, past a hundred hours to the day; its blanks do not break.
 *
 * @throws Error `A length must be 0 minutes or more, not x.`
 * @example showLength(72) // '1\u00a0h\u00a012'
 * @example showLength(20) // '20\u00a0min'
 */
export function showLength(minutes: Minutes): string {
  const { d, h, m } = split(minutes);
  if (d > 0) return `${d}${HELD}${nameOf('day', d)}`;
  if (h === 0) return `${m}${HELD}min`;
  return m === 0 ? `${h}${HELD}h` : `${h}${HELD}h${HELD}${String(m).padStart(2, '0')}`;
}

/**
 * A length of time as it is said.
 *
 * @throws Error `A length must be 0 minutes or more, not x.`
 * @example sayLength(72) // 'one hour twelve minutes'
 */
export function sayLength(minutes: Minutes): string {
  const { d, h, m } = split(minutes);
  if (d > 0) return sayNumber(d, 'day');
  if (h === 0) return sayNumber(m, 'minute');
  if (m === 0) return sayNumber(h, 'hour');
  return twinned(() => `${sayNumber(h, 'hour')} ${sayNumber(m, 'minute')}`);
}
