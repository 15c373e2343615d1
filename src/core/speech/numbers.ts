import { fill } from './fill.ts';
import { between, inDigits, nameOf } from './measures.ts';
import { tongue, twinned } from './tongue.ts';

/**
 * Numbers as they are said: the unit is always there, and numbers that sound alike in a noisy
 * kitchen (thirteen and thirty, up to nineteen and ninety) are said twice, digit by digit the
 * second time. One decimal, 0 to 99999: biology and a kitchen scale need no more; ounces take two.
 */

/** What is counted, in the singular; `null` for a plain count such as "two of three". */
export type Unit =
  | 'gram'
  | 'ounce'
  | 'pound'
  | 'degree'
  | 'degree Fahrenheit'
  | 'percent'
  | 'minute'
  | 'hour'
  | 'day'
  | 'second'
  | 'loaf'
  | 'load';

const PLURAL: Readonly<Record<Unit, string>> = {
  gram: 'grams',
  ounce: 'ounces',
  pound: 'pounds',
  degree: 'degrees',
  'degree Fahrenheit': 'degrees Fahrenheit',
  percent: 'percent',
  minute: 'minutes',
  hour: 'hours',
  day: 'days',
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

/** 0 to 99 in words, once, without a unit. */
export function belowHundred(n: number): string {
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

const digits = (written: string): string =>
  Array.from(written, (d) => (d === '.' ? 'point' : ONES[Number(d)])).join(' ');

const twin = (n: number): boolean => (n >= 13 && n <= 19) || (n >= 30 && n % 10 === 0);

/** Whether a number is taken for another: 13 for 30 … 19 for 90, 113 for 130, 14000 for 40000. */
export const soundsLikeAnother = (n: number): boolean =>
  twin(Math.floor(n) % 100) || twin(Math.floor(n / 1000));

/** At most so many decimals. */
type Decimals = 1 | 2;
const rounded = (n: number, decimals: Decimals): number => {
  const scale = 10 ** decimals;
  return Math.round(n * scale) / scale;
};

/**
 * A whole number from 0 to 99999 in English words and once, without a unit: an end of a span, whose other end
 * tells it from what sounds alike.
 */
export const sayEnd = (n: number): string => whole(Math.round(n));

/**
 * A number in words, with its unit.
 *
 * @param n 0 to 99999, rounded to one decimal, or to two
 * @throws Error `A number to say must be from 0 to 99999, not x.`
 * @example sayNumber(18, 'gram') // 'eighteen, one eight, grams'
 * @example sayNumber(24.5, 'degree') // 'twenty-four point five degrees'
 * @example sayNumber(2.05, 'ounce', 2) // 'two point zero five ounces'
 */
export const sayNumber = (n: number, unit: Unit | null, decimals: Decimals = 1): string =>
  twinned(() =>
    tongue() === 'en' ? numberInWords(n, unit, decimals) : sayDigits(n, unit, decimals),
  );

/** Another tongue's numbers are read off their digits, by whoever speaks it; what sounds alike is told twice too. */
function sayDigits(n: number, unit: Unit | null, decimals: Decimals): string {
  const value = rounded(n, decimals);
  const once = inDigits(value, decimals);
  const name = unit === null ? '' : nameOf(unit, value);
  if (!soundsLikeAnother(value)) return name === '' ? once : `${once} ${name}`;
  return [once, Array.from(once).join(' '), ...(name === '' ? [] : [name])].join(', ');
}

/** The same in English, whatever stands. */
export function numberInWords(n: number, unit: Unit | null, decimals: Decimals = 1): string {
  const value = rounded(n, decimals);
  if (!(value >= 0 && value <= 99_999))
    throw new Error(`A number to say must be from 0 to 99999, not ${n}.`);
  const part = String(value).split('.')[1];
  const once = whole(Math.floor(value)) + (part === undefined ? '' : ` point ${digits(part)}`);
  const name = unit === null ? '' : value === 1 ? unit : PLURAL[unit];
  if (soundsLikeAnother(value))
    return `${once}, ${digits(String(value))}${name === '' ? '' : `, ${name}`}`;
  return name === '' ? once : `${once} ${name}`;
}

/** A number as it is said that may lie below nought. */
export const sayBelow = (n: number, unit: Unit | null): string =>
  n < 0
    ? twinned(() => fill(between.minus, { number: sayNumber(Math.abs(n), unit) }))
    : sayNumber(n, unit);

/** A number as it is shown: at most one decimal or two, none when it is whole. */
export const showNumber = (n: number, decimals: Decimals = 1): string =>
  inDigits(rounded(n, decimals), decimals);
