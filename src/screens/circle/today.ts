import { localeOf } from '../../core/speech/measures.ts';
import type { DayKey } from '../../core/circle/day-key.ts';
import { MINUTE } from '../../core/units.ts';
import type { Instant } from '../../core/units.ts';
import type { House } from '../house.ts';

const two = (n: number): string => String(n).padStart(2, '0');

/** The day on this tablet's wall at a kitchen instant. */
export function dayAt(house: Pick<House, 'wall'>, at: Instant): DayKey {
  const wall = new Date(house.wall(at));
  return `${wall.getFullYear()}-${two(wall.getMonth() + 1)}-${two(wall.getDate())}`;
}

/** Today on this tablet's wall, and the minute of it. */
export const todayOf = (house: Pick<House, 'wall' | 'now'>): DayKey => dayAt(house, house.now());
export const minuteOf = (house: Pick<House, 'now' | 'midnight'>): number =>
  Math.floor((house.now() - house.midnight(house.now())) / MINUTE);

const atNoon = (day: DayKey): Date => new Date(`${day}T12:00:00Z`);

/** 'Sat', and '3 May 2031': a day of the calendar, the same in every zone. */
export const weekdayShown = (day: DayKey): string =>
  atNoon(day).toLocaleDateString(localeOf(), { weekday: 'short', timeZone: 'UTC' });
export const dateShown = (day: DayKey): string =>
  atNoon(day).toLocaleDateString(localeOf(), {
    ...{ day: 'numeric', month: 'short', year: 'numeric' },
    timeZone: 'UTC',
  });
