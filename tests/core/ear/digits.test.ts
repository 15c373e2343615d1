import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  nextDigits,
  numberOf,
  readingOf,
  withDigit,
  withoutLast,
  writtenDigits,
  type DigitLimits,
  type Digits,
} from '../../../src/core/ear/digits.ts';
import { DIGITS, type EarDigit } from '../../../src/core/ear/phrases.ts';

const DOUGH: DigitLimits = { least: -30, most: 100, decimals: 1 };
const SCALE: DigitLimits = { least: 1, most: 99_999, decimals: 0 };

const said = (words: string): Digits => words.split(' ') as EarDigit[];

/** Said one after the other; those that cannot be are left out, as the screen leaves them out. */
const walked = (digits: Digits, limits: DigitLimits): Digits =>
  digits.reduce<Digits>((so, digit) => withDigit(so, digit, limits) ?? so, []);

describe('digits, one by one', () => {
  it.each([
    ['two four point five', DOUGH, 24.5],
    ['zero', DOUGH, 0],
    ['zero point five', DOUGH, 0.5],
    ['one zero zero', DOUGH, 100],
    ['one two five zero', SCALE, 1250],
  ])('%s is a number', (words, limits, number) => {
    expect(walked(said(words), limits)).toEqual(said(words));
    expect(readingOf(said(words), limits)).toBe(number);
  });

  it('are read back as they are written, the point too', () => {
    expect(writtenDigits(said('two four point five'))).toBe('24.5');
    expect(writtenDigits(said('two four point'))).toBe('24.');
    expect(writtenDigits([])).toBe('');
  });

  it.each([
    ['nothing yet', [], DOUGH],
    ['a point alone', said('point'), DOUGH],
    ['nothing behind the point', said('two four point'), DOUGH],
    ['too much', said('one zero one'), DOUGH],
    ['too little', said('zero'), SCALE],
  ])('are no reading: %s', (_, digits, limits) => {
    expect(readingOf(digits, limits)).toBeNull();
  });

  it.each([
    ['one zero', 'one', DOUGH],
    ['two four point five', 'one', DOUGH],
    ['two point five', 'point', DOUGH],
    ['zero', 'four', DOUGH],
    ['one two', 'point', SCALE],
    ['nine nine nine nine nine', 'zero', SCALE],
  ] as const)('after %s there is no %s', (words, digit, limits) => {
    expect(withDigit(said(words), digit, limits)).toBeNull();
    expect(nextDigits(said(words), limits)).not.toContain(digit);
  });

  it('begin with any digit, and with no point', () => {
    expect(nextDigits([], DOUGH)).toEqual(DIGITS.filter((digit) => digit !== 'point'));
  });

  it('go back one by one to nothing, and nothing is where it ends', () => {
    expect(withoutLast(said('two four point'))).toEqual(said('two four'));
    expect(withoutLast(said('two'))).toEqual([]);
    expect(withoutLast([])).toEqual([]);
  });

  it('are never more than the reading may be, whatever is said, and the last can always be taken back', () => {
    const anything = fc.array(fc.constantFrom(...DIGITS), { maxLength: 12 });
    fc.assert(
      fc.property(anything, fc.constantFrom(DOUGH, SCALE), (digits, limits) => {
        const so = walked(digits, limits);
        const number = numberOf(so);
        if (number !== null) expect(number).toBeLessThanOrEqual(limits.most);
        const [, behind = ''] = writtenDigits(so).split('.');
        expect(behind.length).toBeLessThanOrEqual(limits.decimals);
        const [last] = so.slice(-1);
        if (last) expect(withDigit(withoutLast(so), last, limits)).toEqual(so);
      }),
    );
  });
});
