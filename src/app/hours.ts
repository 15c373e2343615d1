import { showTime, type Clock } from '../core/speech/show-time.ts';
import type { Instant } from '../core/units.ts';

const ZONED = {
  hour: { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' },
  day: { weekday: 'short' },
  date: { day: 'numeric', month: 'short', year: 'numeric' },
} as const;
type Kind = keyof typeof ZONED;

/** A formatter keeps the zone it was made in: each zone gets its own. */
const made = new Map<string, Intl.DateTimeFormat>();
const format = (kind: Kind, wall: Instant, timeZone: string): string => {
  const key = `${kind} ${timeZone}`;
  const known = made.get(key) ?? new Intl.DateTimeFormat('en-GB', { ...ZONED[kind], timeZone });
  made.set(key, known);
  return known.format(wall);
};

/** The tablet's zone as it is just now: 'Europe/Copenhagen'. */
export const zoneNow = (): string => new Intl.DateTimeFormat().resolvedOptions().timeZone;
/** '15:05' or '3:05 pm' on this tablet's wall. */
export const hourOf = (wall: Instant, clock: Clock, zone: string): string =>
  showTime(format('hour', wall, zone), clock);
/** 'Sat'. */
export const dayOf = (wall: Instant, zone: string): string => format('day', wall, zone);
/** '3 May 2031'. */
export const dateOf = (wall: Instant, zone: string): string => format('date', wall, zone);
