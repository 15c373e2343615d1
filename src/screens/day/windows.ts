import { localeOf } from '../../core/speech/measures.ts';
import type { Span } from '../../core/day/plan/types.ts';
import type { WeeklyWindow } from '../../core/day/plan/wall-clock.ts';
import { awayPage } from '../../core/speech/words/day.ts';
import { fill } from '../../core/speech/fill.ts';
import { awayKeptAs } from '../../core/speech/show-away.ts';
import { HOUR, MINUTE, type Instant } from '../../core/units.ts';
import type { House } from '../house.ts';
import { wallOf, type Minute } from './day-hours.ts';

/** Days of the week, Monday first; 0 is Sunday. */
const WEEK = [1, 2, 3, 4, 5, 6, 0] as const;
export const DAYS = {
  everyDay: WEEK,
  weekdays: [1, 2, 3, 4, 5],
  weekend: [6, 0],
} as const satisfies Readonly<Record<string, readonly number[]>>;

/** A working day and an afternoon, until it is said. Judgement. */
export const newWeekly = (): WeeklyWindow => ({
  name: awayKeptAs('work'),
  weekdays: [...DAYS.weekdays],
  from: 8 * 60,
  to: 16 * 60,
  canBend: true,
});

/** The next full hour, for two hours. */
export const newOnce = (now: Instant): Span => {
  const from = Math.ceil(now / HOUR) * HOUR;
  return { name: awayKeptAs('out'), from, to: from + 2 * HOUR, canBend: false };
};

const same = (a: readonly number[], b: readonly number[]): boolean =>
  a.length === b.length && a.every((day) => b.includes(day));

const SUNDAY = Date.UTC(2023, 0, 1, 12);
/** 'Mon': a weekday's short name; the week is any. */
const weekday = (day: number): string =>
  new Date(SUNDAY + day * 24 * HOUR).toLocaleDateString(localeOf(), {
    weekday: 'short',
    timeZone: 'UTC',
  });

export function daysWords(weekdays: readonly number[]): string {
  const known = (Object.keys(DAYS) as (keyof typeof DAYS)[]).find((name) =>
    same(weekdays, DAYS[name]),
  );
  if (known) return awayPage[known];
  return WEEK.filter((day) => weekdays.includes(day))
    .map(weekday)
    .join(', ');
}

export const weekdayTiles = () => WEEK.map((day) => ({ value: String(day), label: weekday(day) }));

/** '22:30' of a minute of the day, on the clock this tablet is read by. */
export function minuteWords(house: House, minute: Minute): string {
  const wall = wallOf(house);
  return house.hour(wall.at(wall.day(0), ((minute % 1440) + 1440) % 1440));
}

export const weeklyWords = (house: House, { from, to }: WeeklyWindow): string =>
  fill(awayPage.span, { time: minuteWords(house, from), until: minuteWords(house, to) });
export const onceWords = (house: House, { from, to }: Span): string =>
  fill(awayPage.span, { time: house.hour(from), until: house.hour(to) });

/** Half an hour on or back, round the clock. */
export const roundClock = (minute: Minute): Minute => ((minute % 1440) + 1440) % 1440;
/** A one-off's end is never before its beginning: the other end gives way. */
export const withFrom = (span: Span, from: Instant): Span => ({
  ...span,
  from,
  to: Math.max(span.to, from + 30 * MINUTE),
});
export const withTo = (span: Span, to: Instant): Span => ({
  ...span,
  to,
  from: Math.min(span.from, to - 30 * MINUTE),
});
