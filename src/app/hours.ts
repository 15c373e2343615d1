import { showTime, type Clock } from '../core/speech/show-time.ts';
import type { Instant } from '../core/units.ts';

const CLOCK = new Intl.DateTimeFormat('en-GB', {
  hour: '2-digit',
  minute: '2-digit',
  hour12: false,
});
const DAY = new Intl.DateTimeFormat('en-GB', { weekday: 'short' });
const DATE = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });

/** '15:05' or '3:05 pm' on this tablet's wall. */
export const hourOf = (wall: Instant, clock: Clock): string => showTime(CLOCK.format(wall), clock);
/** 'Sat'. */
export const dayOf = (wall: Instant): string => DAY.format(wall);
/** '3 May 2031'. */
export const dateOf = (wall: Instant): string => DATE.format(wall);
