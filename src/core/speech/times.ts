import { fill } from './fill.ts';
import { between } from './measures.ts';
import { belowHundred } from './numbers.ts';
import { DAY } from './show-time.ts';
import { tongue, twinned } from './tongue.ts';

const HALF_DAY = /^(1[0-2]|[1-9]):([0-5]\d) ([ap]m)$/;

const minutes = (n: number): string => (n < 10 ? `oh ${belowHundred(n)}` : belowHundred(n));

/** 'three oh five pm'; noon and midnight have names, for "twelve am" is neither to half the world. */
function sayHalfDay(hour: number, minute: number, half: string): string {
  if (minute > 0) return `${belowHundred(hour)} ${minutes(minute)} ${half}`;
  if (hour === 12) return half === 'am' ? 'midnight' : 'noon';
  return `${belowHundred(hour)} ${half}`;
}

/**
 * Clock time in words, on the clock it is shown on: the hour first, no "half past", no "ten to".
 *
 * @param time as `showTime` writes it
 * @throws Error `A time to say looks like 13:40 or 1:40 pm, not x.`
 * @example sayTime('13:40') // 'thirteen forty'
 * @example sayTime('3:05 pm') // 'three oh five pm'
 */
export const sayTime = (time: string): string =>
  twinned(() => (tongue() === 'en' ? timeInWords(time) : sayDigits(time)));

/** Another tongue's clock times are read off their digits, by whoever speaks it. */
const sayDigits = (time: string): string =>
  DAY.test(time) ? fill(between.time, { time }) : time.replace('\u00a0', ' ');

/** The same in English, whatever stands. */
export function timeInWords(time: string): string {
  const half = HALF_DAY.exec(time.replace('\u00a0', ' '));
  if (half !== null) return sayHalfDay(Number(half[1]), Number(half[2]), half[3] as string);
  const match = DAY.exec(time);
  if (match === null) throw new Error(`A time to say looks like 13:40 or 1:40 pm, not ${time}.`);
  const hour = Number(match[1]);
  const minute = Number(match[2]);
  if (minute > 0) return `${belowHundred(hour)} ${minutes(minute)}`;
  if (hour === 0) return 'midnight';
  return hour <= 12 ? `${belowHundred(hour)} o’clock` : `${belowHundred(hour)} hundred`;
}
