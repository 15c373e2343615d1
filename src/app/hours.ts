import { localeOf } from '../core/speech/measures.ts';
import { showTime, type Clock } from '../core/speech/show-time.ts';
import type { Instant } from '../core/units.ts';

// No formatter is kept: one stays in the zone it was made in, and a tablet may come to another.
const two = (n: number): string => String(n).padStart(2, '0');

/** '15:05' or '3:05 pm' on this tablet's wall. */
export const hourOf = (wall: Instant, clock: Clock): string => {
  const at = new Date(wall);
  return showTime(`${two(at.getHours())}:${two(at.getMinutes())}`, clock);
};
/** 'Sat'. */
export const dayOf = (wall: Instant): string =>
  new Date(wall).toLocaleDateString(localeOf(), { weekday: 'short' });
/** '3 May 2031'. */
export const dateOf = (wall: Instant): string =>
  new Date(wall).toLocaleDateString(localeOf(), {
    day: 'numeric',
    month: 'short',
    year: 'numeric',
  });
/** Milliseconds since the last midnight on this tablet's wall. */
export const sinceMidnight = (wall: Instant): number => wall - new Date(wall).setHours(0, 0, 0, 0);
