import { inTongue, tongue } from './tongue.ts';

/**
 * What is counted and measured, by its name: one of it, and any other number. In English they stand in
 * numbers.ts, as they are said; here they stand as another tongue has them.
 */
export const counted = inTongue('measures', 'counted', {
  gram: { one: 'gram', other: 'grams' },
  ounce: { one: 'ounce', other: 'ounces' },
  pound: { one: 'pound', other: 'pounds' },
  degree: { one: 'degree', other: 'degrees' },
  'degree Fahrenheit': { one: 'degree Fahrenheit', other: 'degrees Fahrenheit' },
  percent: { one: 'percent', other: 'percent' },
  minute: { one: 'minute', other: 'minutes' },
  hour: { one: 'hour', other: 'hours' },
  day: { one: 'day', other: 'days' },
  second: { one: 'second', other: 'seconds' },
  loaf: { one: 'loaf', other: 'loaves' },
  load: { one: 'load', other: 'loads' },
});

/** What stands between numbers and before them. */
export const between = inTongue('measures', 'between', {
  to: '{least} to {most}',
  minus: 'minus {number}',
  /** How far a list is. */
  of: '{done} of {of}',
  /** A clock time as it is said, in a tongue that says its digits. */
  time: '{time}',
});

/** The language tag that dates and numbers go by. */
const LOCALES = { en: 'en-GB', fr: 'fr-FR', de: 'de-DE' } as const;
export const localeOf = (): string => LOCALES[tongue()];

const orders = new Map<string, Intl.Collator>();

/** Letters in the order of the tongue, digits as numbers, large and small alike. */
export function byLetters(a: string, b: string): number {
  const known = orders.get(tongue());
  const order = known ?? new Intl.Collator(tongue(), { numeric: true, sensitivity: 'base' });
  if (!known) orders.set(tongue(), order);
  return order.compare(a, b);
}

const formats = new Map<string, Intl.NumberFormat>();

/** Digits as the tongue writes them, with so many behind the sign at most; no groups. */
export function inDigits(n: number, decimals: number): string {
  if (tongue() === 'en') return String(n);
  const key = `${tongue()} ${decimals}`;
  const format =
    formats.get(key) ??
    new Intl.NumberFormat(localeOf(), { maximumFractionDigits: decimals, useGrouping: false });
  formats.set(key, format);
  return format.format(n);
}

/** What so many of it are called. */
export const nameOf = (what: keyof typeof counted, n: number): string =>
  counted[what][new Intl.PluralRules(tongue()).select(n) === 'one' ? 'one' : 'other'];
