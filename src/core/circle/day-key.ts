/** A day of the calendar, whatever the hour and zone: '2031-05-03'. */
export type DayKey = string;

const DAY_MS = 86_400_000;
const SHAPE = /^\d{4}-\d{2}-\d{2}$/;

const atNoon = (day: DayKey): number => Date.parse(`${day}T12:00:00Z`);

/**
 * Whether a text names a day that there is.
 *
 * @example
 * isDayKey('2031-02-29') // → false
 */
export const isDayKey = (text: unknown): text is DayKey =>
  typeof text === 'string' &&
  SHAPE.test(text) &&
  !Number.isNaN(atNoon(text)) &&
  new Date(atNoon(text)).toISOString().startsWith(text);

/**
 * The day so many days after (or before) another.
 *
 * @example
 * dayAfter('2031-02-28', 1) // → '2031-03-01'
 */
export const dayAfter = (day: DayKey, days: number): DayKey =>
  new Date(atNoon(day) + days * DAY_MS).toISOString().slice(0, 10);

/**
 * The day of the week, 0 for Sunday.
 *
 * @example
 * weekdayOf('2031-05-03') // → 6
 */
export const weekdayOf = (day: DayKey): number => new Date(atNoon(day)).getUTCDay();

/**
 * Whole days from one to another.
 *
 * @example
 * daysBetween('2031-05-03', '2031-05-10') // → 7
 */
export const daysBetween = (from: DayKey, to: DayKey): number =>
  Math.round((atNoon(to) - atNoon(from)) / DAY_MS);
