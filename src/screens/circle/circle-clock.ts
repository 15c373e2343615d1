import { createMemo, untrack, type Accessor } from 'solid-js';
import { dayAfter, type DayKey } from '../../core/circle/day-key.ts';
import type { MinuteOfDay } from '../../core/kitchen/equipment.ts';
import { showTime } from '../../core/speech/show-time.ts';
import type { House } from '../house.ts';
import { dateShown, minuteOf, todayOf, weekdayShown } from './today.ts';

const two = (n: number): string => String(n).padStart(2, '0');
const SUNDAY: DayKey = '2023-01-01';

/** Days of the calendar and minutes of one, as this tablet shows them. */
export interface CircleClock {
  /** Another one by each midnight alone. */
  readonly today: Accessor<DayKey>;
  /** The minute of the day it is now; it does not go on by itself. */
  minute(): MinuteOfDay;
  /** 'Sat 3 May' */
  date(day: DayKey): string;
  /** 'Sat' of 6. */
  weekday(weekday: number): string;
  /** '10:00' or '10:00 am' */
  hour(minute: MinuteOfDay): string;
}

export const createCircleClock = (house: House): CircleClock => ({
  today: createMemo(() => todayOf(house)),
  minute: () => untrack(() => minuteOf(house)),
  date: (day) => `${weekdayShown(day)} ${dateShown(day).replace(/ \d{4}$/, '')}`,
  weekday: (weekday) => weekdayShown(dayAfter(SUNDAY, weekday)),
  hour: (minute) =>
    showTime(`${two(Math.floor(minute / 60))}:${two(minute % 60)}`, house.ways().clock),
});
