import { DAY, type Instant } from '../../units.ts';

/** A day and a time of day as a clock on the wall shows them; `month` 1–12. */
export interface WallTime {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
}

/** Which of two, where the wall shows an hour twice. */
export type Which = 'earlier' | 'later';

/** Making one is slow; a kitchen has one zone, a test nine. */
const formats = new Map<string, Intl.DateTimeFormat>();

function formatOf(zone: string): Intl.DateTimeFormat {
  const known = formats.get(zone);
  if (known) return known;
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    calendar: 'gregory',
    numberingSystem: 'latn',
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
  formats.set(zone, format);
  return format;
}

/** Ms by which a zone's wall is ahead of UTC at an instant. */
function offsetAt(at: Instant, zone: string): number {
  const part: Record<string, number> = {};
  for (const { type, value } of formatOf(zone).formatToParts(at)) part[type] = Number(value);
  const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = part;
  return Date.UTC(year, month - 1, day, hour, minute, second) - Math.floor(at / 1000) * 1000;
}

const asUtc = ({ year, month, day, hour, minute }: WallTime): number =>
  Date.UTC(year, month - 1, day, hour, minute);

/**
 * What the wall shows at an instant in a zone (IANA name). Years after 1900.
 *
 * @throws RangeError for a zone nobody knows
 */
export function wallTime(at: Instant, zone: string): WallTime {
  const date = new Date(at + offsetAt(at, zone));
  return {
    year: date.getUTCFullYear(),
    month: date.getUTCMonth() + 1,
    day: date.getUTCDate(),
    hour: date.getUTCHours(),
    minute: date.getUTCMinutes(),
  };
}

/**
 * All instants at which the wall shows a time, in order: one as a rule, two in the hour that is
 * repeated in autumn, none in the one that is skipped in spring.
 */
export function instantsOf(wall: WallTime, zone: string): Instant[] {
  const utc = asUtc(wall);
  // No zone is further than fifteen hours from UTC, and none changes twice within two days.
  const offsets = new Set([offsetAt(utc - DAY, zone), offsetAt(utc + DAY, zone)]);
  return [...offsets]
    .map((offset) => utc - offset)
    .filter((at) => offsetAt(at, zone) === utc - at)
    .sort((a, b) => a - b);
}

/**
 * The instant at which the wall shows a time. A repeated hour: the earlier or the later one; a skipped
 * one moves forward by the gap.
 */
export function instantOf(wall: WallTime, zone: string, which: Which): Instant {
  const at = instantsOf(wall, zone);
  if (at.length > 0) return which === 'earlier' ? at[0]! : at.at(-1)!;
  return asUtc(wall) - offsetAt(asUtc(wall) - DAY, zone);
}

/** Whether the wall shows an instant's time twice, and which of the two it is; null: once. */
export function whichOf(at: Instant, zone: string): 'first' | 'second' | null {
  const all = instantsOf(wallTime(at, zone), zone);
  if (all.length < 2) return null;
  return at < all[1]! ? 'first' : 'second';
}

/** A window of the week: from a minute of the day on some weekdays (0: Sunday) to a minute, over midnight where that is not later. */
export interface WeeklyWindow {
  readonly name: string;
  readonly weekdays: readonly number[];
  /** Minutes since midnight, as the wall counts. */
  readonly from: number;
  readonly to: number;
  readonly canBend?: boolean;
}

const atMinute = (day: WallTime, minute: number): WallTime => ({
  ...day,
  hour: Math.floor(minute / 60),
  minute: minute % 60,
});

/** The calendar's day so many days on; noon, so that no change of the clock is near. */
function dayAfter({ year, month, day }: WallTime, days: number): WallTime & { weekday: number } {
  const date = new Date(Date.UTC(year, month - 1, day + days, 12));
  return {
    year: date.getUTCFullYear(),
    month: date.getUTCMonth() + 1,
    day: date.getUTCDate(),
    hour: 0,
    minute: 0,
    weekday: date.getUTCDay(),
  };
}

/**
 * The spans of weekly windows that touch `from`…`to`, day by day of the wall's calendar. A window
 * belongs to the day it begins on. Where an hour is shown twice it begins at the earlier and ends at
 * the later: it blocks more, never less. Lengths are elapsed: a night of the change is an hour off.
 */
export function expandWeekly(
  windows: readonly WeeklyWindow[],
  { from, to, zone }: { readonly from: Instant; readonly to: Instant; readonly zone: string },
): { name: string; from: Instant; to: Instant; canBend: boolean }[] {
  const first = wallTime(from - DAY, zone);
  const days = Math.ceil((to - from) / DAY) + 3;
  const spans = Array.from({ length: days }, (_, i) => dayAfter(first, i)).flatMap((day) =>
    windows
      .filter(({ weekdays }) => weekdays.includes(day.weekday))
      .map((window) => {
        const end = window.to > window.from ? day : dayAfter(day, 1);
        return {
          name: window.name,
          from: instantOf(atMinute(day, window.from), zone, 'earlier'),
          to: instantOf(atMinute(end, window.to), zone, 'later'),
          canBend: window.canBend ?? true,
        };
      }),
  );
  return spans
    .filter((span) => span.from < to && span.to > from && span.to > span.from)
    .sort((a, b) => a.from - b.from);
}
