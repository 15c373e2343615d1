/**
 * Numbers as they are said: the unit is always there, and numbers that sound alike in a noisy
 * kitchen (thirteen and thirty, up to nineteen and ninety) are said twice, digit by digit the
 * second time. One decimal at most, 0 to 99999: biology and a kitchen scale need no more.
 */

/** What is counted, in the singular; `null` for a plain count such as "two of three". */
export type Unit = 'gram' | 'degree' | 'percent' | 'minute' | 'hour' | 'second' | 'loaf' | 'load';

const PLURAL: Readonly<Record<Unit, string>> = {
  gram: 'grams',
  degree: 'degrees',
  percent: 'percent',
  minute: 'minutes',
  hour: 'hours',
  second: 'seconds',
  loaf: 'loaves',
  load: 'loads',
};

const ONES = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const TEENS = [
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
];
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

function belowHundred(n: number): string {
  if (n < 10) return ONES[n] as string;
  if (n < 20) return TEENS[n - 10] as string;
  const tens = TENS[Math.floor(n / 10)] as string;
  return n % 10 === 0 ? tens : `${tens}-${ONES[n % 10]}`;
}

function whole(n: number): string {
  const parts: string[] = [];
  if (n >= 1000) parts.push(`${belowHundred(Math.floor(n / 1000))} thousand`);
  if (n % 1000 >= 100) parts.push(`${ONES[Math.floor((n % 1000) / 100)]} hundred`);
  const rest = n % 100;
  if (parts.length === 0) return belowHundred(rest);
  if (rest > 0) parts.push(`and ${belowHundred(rest)}`);
  return parts.join(' ');
}

const digits = (n: number): string =>
  Array.from(String(n), (d) => (d === '.' ? 'point' : ONES[Number(d)])).join(' ');

const twin = (n: number): boolean => (n >= 13 && n <= 19) || (n >= 30 && n % 10 === 0);

/** Whether a number is taken for another: 13 for 30 … 19 for 90, 113 for 130, 14000 for 40000. */
export const soundsLikeAnother = (n: number): boolean =>
  twin(Math.floor(n) % 100) || twin(Math.floor(n / 1000));

/**
 * A number in words, with its unit.
 *
 * @param n 0 to 99999, rounded to one decimal
 * @throws Error `A number to say must be from 0 to 99999, not x.`
 * @example sayNumber(18, 'gram') // 'eighteen, one eight, grams'
 * @example sayNumber(24.5, 'degree') // 'twenty-four point five degrees'
 */
export function sayNumber(n: number, unit: Unit | null): string {
  const rounded = Math.round(n * 10) / 10;
  if (!(rounded >= 0 && rounded <= 99_999))
    throw new Error(`A number to say must be from 0 to 99999, not ${n}.`);
  const tenths = Math.round(rounded * 10) % 10;
  const once = whole(Math.floor(rounded)) + (tenths === 0 ? '' : ` point ${ONES[tenths]}`);
  const name = unit === null ? '' : rounded === 1 ? unit : PLURAL[unit];
  if (soundsLikeAnother(rounded))
    return `${once}, ${digits(rounded)}${name === '' ? '' : `, ${name}`}`;
  return name === '' ? once : `${once} ${name}`;
}

/** A number as it is shown: at most one decimal, none when it is whole. */
export const showNumber = (n: number): string => String(Math.round(n * 10) / 10);

/**
 * Clock time in words: the hour first, no "half past", no "ten to".
 *
 * @param time 'HH:MM', 24 hours
 * @throws Error `A time to say looks like 13:40, not x.`
 * @example sayTime('13:40') // 'thirteen forty'
 */
export function sayTime(time: string): string {
  const match = /^([01]\d|2[0-3]):([0-5]\d)$/.exec(time);
  if (match === null) throw new Error(`A time to say looks like 13:40, not ${time}.`);
  const hour = Number(match[1]);
  const minute = Number(match[2]);
  if (minute === 0) {
    if (hour === 0) return 'midnight';
    return hour <= 12 ? `${belowHundred(hour)} o’clock` : `${belowHundred(hour)} hundred`;
  }
  return `${belowHundred(hour)} ${minute < 10 ? `oh ${ONES[minute]}` : belowHundred(minute)}`;
}
