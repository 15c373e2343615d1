import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sayNumber, showNumber, soundsLikeAnother } from '../../../src/core/speech/numbers.ts';

const SMALL =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** Reads number words back, written apart from the code under test. */
function hear(words: string): number {
  let total = 0;
  let below = 0;
  let tenths = 0;
  let afterPoint = false;
  for (const word of words.split(/[ -]/)) {
    const small = SMALL.indexOf(word);
    const ten = TENS.indexOf(word);
    if (word === 'point') afterPoint = true;
    else if (afterPoint) tenths = small / 10;
    else if (small >= 0) below += small;
    else if (ten >= 0) below += (ten + 2) * 10;
    else if (word === 'hundred') below *= 100;
    else if (word === 'thousand') {
      total += below * 1000;
      below = 0;
    } else if (word !== 'and') throw new Error(`heard ${word}`);
  }
  return total + below + tenths;
}

const hearDigits = (words: string): number =>
  Number(
    words
      .split(' ')
      .map((w) => (w === 'point' ? '.' : SMALL.indexOf(w)))
      .join(''),
  );

test('the words of look-alikes, decimals and hundreds', () => {
  expect(sayNumber(18, 'gram')).toBe('eighteen, one eight, grams');
  expect(sayNumber(80, 'gram')).toBe('eighty, eight zero, grams');
  expect(sayNumber(24.5, 'degree')).toBe('twenty-four point five degrees');
  expect(sayNumber(30.5, 'degree')).toBe('thirty point five, three zero point five, degrees');
  expect(sayNumber(113, 'gram')).toBe('one hundred and thirteen, one one three, grams');
  expect(sayNumber(705, 'gram')).toBe('seven hundred and five grams');
  expect(sayNumber(9999, 'gram')).toBe('nine thousand nine hundred and ninety-nine grams');
  expect(sayNumber(12_667, 'gram')).toBe('twelve thousand six hundred and sixty-seven grams');
  expect(sayNumber(14_000, 'gram')).toBe('fourteen thousand, one four zero zero zero, grams');
  expect(sayNumber(1, 'loaf')).toBe('one loaf');
  expect(sayNumber(0.5, 'gram')).toBe('zero point five grams');
  expect(sayNumber(2, null)).toBe('two');
  expect(sayNumber(14, null)).toBe('fourteen, one four');
});

test('whole numbers come back as they went, the unit is last, never empty', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 99_999 }), (n) => {
      const words = sayNumber(n, 'gram');
      const parts = words.replace(/,? grams?$/, '').split(', ');
      expect(words).toMatch(n === 1 ? / gram$/ : / grams$/);
      expect(hear(parts[0] as string)).toBe(n);
      expect(parts.length).toBe(soundsLikeAnother(n) ? 2 : 1);
      if (parts.length === 2) expect(hearDigits(parts[1] as string)).toBe(n);
    }),
    { numRuns: 2000 },
  );
});

test('one decimal comes back too, and a second is rounded away', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 99_999 }),
      fc.double({ min: -0.04, max: 0.04, noNaN: true }),
      (t, d) => {
        const words = sayNumber(Math.max(0, t / 10 + d), 'degree');
        expect(hear(words.replace(/,? degrees?$/, '').split(', ')[0] as string)).toBeCloseTo(
          t / 10,
          9,
        );
        expect(showNumber(Math.max(0, t / 10 + d))).toBe(String(t / 10));
      },
    ),
  );
});

test('two decimals where they are asked for, a digit at a time', () => {
  expect(sayNumber(2.05, 'ounce', 2)).toBe('two point zero five ounces');
  expect(sayNumber(14.1, 'ounce', 2)).toBe('fourteen point one, one four point one, ounces');
  expect(sayNumber(0.35, 'ounce', 2)).toBe('zero point three five ounces');
  expect(sayNumber(1, 'ounce', 2)).toBe('one ounce');
  expect(showNumber(0.354, 2)).toBe('0.35');
  expect(sayNumber(75, 'degree Fahrenheit')).toBe('seventy-five degrees Fahrenheit');
});

test('every pair that sounds alike is said twice on both sides', () => {
  for (let digit = 3; digit <= 9; digit++)
    for (const hundreds of [0, 100, 2300]) {
      expect(sayNumber(hundreds + 10 + digit, 'gram')).toContain(', ');
      expect(sayNumber(hundreds + 10 * digit, 'gram')).toContain(', ');
    }
  for (const plain of [0, 10, 11, 12, 20, 21, 99, 100, 820])
    expect(sayNumber(plain, 'gram')).not.toContain(', ');
});

test('what cannot be said throws', () => {
  for (const n of [-1, -0.1, 100_000, Number.NaN, Number.POSITIVE_INFINITY])
    expect(() => sayNumber(n, 'gram')).toThrow(
      `A number to say must be from 0 to 99999, not ${n}.`,
    );
});
