import { createMemo, untrack, type Accessor } from 'solid-js';
import { instantOf, wallTime, type WallTime } from '../../core/day/plan/wall-clock.ts';
import { DAY, HOUR, type Instant } from '../../core/units.ts';
import type { House } from '../house.ts';

/** Minutes since midnight. */
export type Minute = number;

/** The tablet's wall, as the Day asks for hours on it. */
export interface Wall {
  /** Noon of so many days from today. */
  day(ahead: number): WallTime;
  /** Kitchen time at a minute of a day; the earlier one where the wall shows it twice. */
  at(day: WallTime, minute: Minute): Instant;
  /** The minute of its day at which an instant is. */
  minute(at: Instant): Minute;
  /** How many midnights from now to an instant. */
  ahead(at: Instant): number;
}

const noonOf = ({ year, month, day }: WallTime, ahead: number): WallTime => {
  const date = new Date(Date.UTC(year, month - 1, day + ahead, 12));
  return {
    year: date.getUTCFullYear(),
    month: date.getUTCMonth() + 1,
    day: date.getUTCDate(),
    hour: 12,
    minute: 0,
  };
};

/** As it is now; it does not go on by itself. */
export function wallOf(house: Pick<House, 'now' | 'wall' | 'zone'>): Wall {
  const zone = house.zone();
  const now = untrack(house.now);
  const back = now - house.wall(now);
  const shown = (at: Instant): WallTime => wallTime(at - back, zone);
  const today = shown(now);
  return {
    day: (ahead) => noonOf(today, ahead),
    at: (day, minute) =>
      instantOf({ ...day, hour: Math.floor(minute / 60), minute: minute % 60 }, zone, 'earlier') +
      back,
    minute(at) {
      const { hour, minute } = shown(at);
      return hour * 60 + minute;
    },
    ahead(at) {
      const { year, month, day } = shown(at);
      const from = Date.UTC(today.year, today.month - 1, today.day);
      return Math.round((Date.UTC(year, month - 1, day) - from) / DAY);
    },
  };
}

/** The same, made anew by each midnight alone: what is pressed must not be drawn anew by the second. */
export function createWall(house: House): Accessor<Wall> {
  const today = createMemo(() => house.midnight(house.now()));
  return createMemo(() => {
    today();
    return wallOf(house);
  });
}

/** 'Sat 12:00', and '12:00' where it is today. */
export const dayAndHour = (
  house: Pick<House, 'hour' | 'day' | 'midnight' | 'now'>,
  at: Instant,
): string =>
  house.midnight(at) === house.midnight(untrack(house.now))
    ? house.hour(at)
    : `${house.day(at)} ${house.hour(at)}`;

/** Hours that are offered first: before work, before school, noon, after it, the evening. Judgement. */
export const HOURS: readonly Minute[] = [8, 10, 12, 15, 18, 20].map((hour) => hour * 60);
export const HALF_HOUR = HOUR / 2;
