import { DAY, type Instant } from '../units.ts';

/** The wall clock of whoever reads: `house` is one. */
export interface LogClock {
  hour(at: Instant): string;
  /** 'Sat'. */
  day(at: Instant): string;
  /** '3 May 2031'. */
  date(at: Instant): string;
  /** The last midnight before it. */
  midnight(at: Instant): Instant;
}

/** From so many days on a weekday's name may be two days. */
const WEEK = 6 * DAY;

/**
 * How the instants of a span are written: the hour; with its weekday where there is more than one day in it,
 * with its date where a weekday may come twice.
 */
export function whenIn(
  [from, to]: readonly [Instant, Instant],
  clock: LogClock,
): (at: Instant) => string {
  const { hour, day, date, midnight } = clock;
  if (to - from >= WEEK) return (at) => `${date(at)}, ${hour(at)}`;
  if (midnight(from) !== midnight(to)) return (at) => `${day(at)} ${hour(at)}`;
  return (at) => hour(at);
}
