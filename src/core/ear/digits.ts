import { DIGITS, type EarDigit } from './phrases.ts';

/** What a number may be; both ends included. `decimals`: so many digits behind the point. */
export interface DigitLimits {
  readonly least: number;
  readonly most: number;
  readonly decimals: number;
}

/** Digits as they were said, one after the other. */
export type Digits = readonly EarDigit[];

const figure = (digit: EarDigit): string => (digit === 'point' ? '.' : `${DIGITS.indexOf(digit)}`);

/** As it is written: "24.5". */
export const writtenDigits = (digits: Digits): string => digits.map(figure).join('');

/** What they are so far; null where there is none, or nothing behind the point. */
export function numberOf(digits: Digits): number | null {
  const written = writtenDigits(digits);
  return /^\d+(\.\d+)?$/.test(written) ? Number(written) : null;
}

/** The number, where it is one that the reading may be. */
export function readingOf(digits: Digits, { least, most }: DigitLimits): number | null {
  const number = numberOf(digits);
  return number !== null && number >= least && number <= most ? number : null;
}

/** Whether what is said after these can still be within the limits. */
function canBe(digits: Digits, { most, decimals }: DigitLimits): boolean {
  const written = writtenDigits(digits);
  if (!/^(0|[1-9]\d*)(\.\d*)?$/.test(written)) return false;
  const [, behind = null] = written.split('.');
  if (behind !== null && (decimals === 0 || behind.length > decimals)) return false;
  // More digits only make it more.
  return Number.parseFloat(written) <= most;
}

/** Which digit may come now: a screen listens for these, and yes and no. */
export const nextDigits = (digits: Digits, limits: DigitLimits): readonly EarDigit[] =>
  DIGITS.filter((digit) => canBe([...digits, digit], limits));

/** With one more; null where that cannot be. */
export const withDigit = (digits: Digits, digit: EarDigit, limits: DigitLimits): Digits | null =>
  canBe([...digits, digit], limits) ? [...digits, digit] : null;

/** Without the last: what is taken back is taken back digit by digit. */
export const withoutLast = (digits: Digits): Digits => digits.slice(0, -1);
