import { afterEach, expect, it } from 'vitest';
import {
  dateShown,
  dayAt,
  minuteOf,
  todayOf,
  weekdayShown,
} from '../../../src/screens/circle/today.ts';

const zone = process.env['TZ'];
afterEach(() => {
  if (zone === undefined) delete process.env['TZ'];
  else process.env['TZ'] = zone;
});
const midnight = (at: number): number => new Date(at).setHours(0, 0, 0, 0);

it.each([
  ['Pacific/Auckland', '2031-05-03', 13 * 60],
  ['UTC', '2031-05-03', 60],
  ['Pacific/Honolulu', '2031-05-02', 15 * 60],
])('today is the day on the wall of %s', (tz, day, minute) => {
  process.env['TZ'] = tz;
  const now = Date.UTC(2031, 4, 3, 1);
  const house = { now: () => now, wall: (at: number) => at, midnight };
  expect(todayOf(house)).toBe(day);
  expect(minuteOf(house)).toBe(minute);
  expect(weekdayShown('2031-05-03')).toBe('Sat');
  expect(dateShown('2031-05-03')).toBe('3 May 2031');
});

it('goes by the wall where the clock was set back', () => {
  process.env['TZ'] = 'UTC';
  const hour = 3_600_000;
  expect(dayAt({ wall: (at) => at - 2 * hour }, Date.UTC(2031, 4, 3, 1))).toBe('2031-05-02');
});
