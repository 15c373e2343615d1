import { localeOf } from './measures.ts';
import { tongue } from './tongue.ts';

/**
 * Money as it is shown: numbers of one currency (ISO 4217), written as the locale writes them. Rounded
 * here and nowhere before. `locale`: a language tag; left out, the tongue's, and in English the tablet's own.
 */

const moneyLocale = (): string | undefined => (tongue() === 'en' ? undefined : localeOf());

const formats = new Map<string, Intl.NumberFormat>();

/** Making one takes long; there are few of them. */
function formatOf(
  locale: string | undefined,
  options: Intl.NumberFormatOptions,
): Intl.NumberFormat {
  const key = JSON.stringify([locale, options]);
  const known = formats.get(key);
  if (known) return known;
  const fresh = new Intl.NumberFormat(locale, options);
  formats.set(key, fresh);
  return fresh;
}

/** Whether it is written as three letters that can name a currency; others throw in all that follows. */
export const isCurrency = (code: string): boolean => /^[A-Z]{3}$/.test(code);

const names = new Map<string | undefined, Intl.DisplayNames>();

/** A currency's name in the tablet's own words; where it has none, its three letters. */
export function currencyName(currency: string, locale = moneyLocale()): string {
  const known = names.get(locale);
  const of = known ?? new Intl.DisplayNames(locale, { type: 'currency' });
  if (!known) names.set(locale, of);
  return of.of(currency) ?? currency;
}

/** Digits behind the point that a currency is counted in: two of most, none of some. */
export const moneyDigits = (currency: string): number =>
  formatOf('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2;

/** How a currency is written beside a number that is keyed: '€', 'CA$'. */
export const currencySign = (currency: string, locale = moneyLocale()): string =>
  formatOf(locale, { style: 'currency', currency })
    .formatToParts(0)
    .find(({ type }) => type === 'currency')?.value ?? currency;

/**
 * A sum of money, with the currency's own digits.
 *
 * @throws RangeError where the currency is no three letters
 */
export const showMoney = (amount: number, currency: string, locale = moneyLocale()): string =>
  formatOf(locale, { style: 'currency', currency }).format(amount);

/** Digits that a unit's cost keeps: more would be read as knowledge. Judgement. */
const TELLING = 4;
const MOST_DIGITS = 10;

/** Cost of a unit, such as of a gram or of a kilo: four telling digits at least, and the currency's own. */
export function showUnitCost(amount: number, currency: string, locale = moneyLocale()): string {
  const own = moneyDigits(currency);
  const size = amount > 0 ? Math.floor(Math.log10(amount)) : 0;
  const digits = Math.min(MOST_DIGITS, Math.max(own, TELLING - 1 - size));
  return formatOf(locale, {
    style: 'currency',
    currency,
    minimumFractionDigits: own,
    maximumFractionDigits: digits,
  }).format(amount);
}

/** A part of a sum: one digit more than the currency has, so that parts come to what is shown of all. */
export function showPart(amount: number, currency: string, locale = moneyLocale()): string {
  const digits = moneyDigits(currency) + 1;
  return formatOf(locale, {
    style: 'currency',
    currency,
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  }).format(amount);
}

/** A number that is no money: how many times. */
export const showTimes = (times: number, locale = moneyLocale()): string =>
  formatOf(locale, { maximumFractionDigits: 2 }).format(times);

const rounded = (amount: number, digits: number): number => Number(amount.toFixed(digits));

/**
 * A multiplication with money as whoever reckons it again will find it: what is multiplied is written
 * with as many digits as its shown result needs. Digits of both, in the order of the sum.
 *
 * @example showProduct(3, 1.1167, 'EUR', 'en') // { times: '3', cost: '€1.117', result: '€3.35' }
 */
export function showProduct(
  times: number,
  cost: number,
  currency: string,
  locale = moneyLocale(),
): { readonly times: string; readonly cost: string; readonly result: string } {
  const own = moneyDigits(currency);
  const result = rounded(times * cost, own);
  let digits = own;
  while (digits < MOST_DIGITS && rounded(times * rounded(cost, digits), own) !== result) digits++;
  return {
    times: formatOf(locale, { maximumFractionDigits: 6 }).format(times),
    cost: formatOf(locale, {
      style: 'currency',
      currency,
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
    }).format(cost),
    result: showMoney(result, currency, locale),
  };
}
