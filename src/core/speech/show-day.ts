import { weekdayOf, type DayKey } from '../circle/day-key.ts';
import type { MinuteOfDay } from '../kitchen/equipment.ts';
import { showTime, type Clock } from './show-time.ts';

const DAY_MINUTES = 1440;
const two = (n: number): string => String(n).padStart(2, '0');

const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'] as const;
const MONTHS = [
  ...['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun'],
  ...['Jul', 'Aug', 'Sept', 'Oct', 'Nov', 'Dec'],
] as const;

/**
 * A minute of a day as it is shown; one past midnight, or before it, is told as the clock shows it then.
 *
 * @example showMinute(770, '24') // '12:50'
 * @example showMinute(1500, '12') // '1:00 am'
 */
export function showMinute(minute: MinuteOfDay, clock: Clock): string {
  const of = ((Math.round(minute) % DAY_MINUTES) + DAY_MINUTES) % DAY_MINUTES;
  return showTime(`${two(Math.floor(of / 60))}:${two(of % 60)}`, clock);
}

/**
 * A day of the calendar as it is shown.
 *
 * @example showDay('2031-05-03') // 'Sat 3 May'
 */
export const showDay = (day: DayKey): string =>
  `${WEEKDAYS[weekdayOf(day)]} ${Number(day.slice(8))} ${MONTHS[Number(day.slice(5, 7)) - 1]}`;
