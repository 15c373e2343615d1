import { belowHundred } from '../../../src/core/speech/numbers.ts';

const count = (from: number, to: number): readonly number[] =>
  Array.from({ length: to - from + 1 }, (_, i) => from + i);

/**
 * What numbers and times are joined from: 0 to 99 whole, hundreds with and without "and", a decimal's
 * first digit with its point, and every unit, one and many.
 */
export const NUMBER_KIT: readonly string[] = [
  ...count(0, 99).map(belowHundred),
  ...count(1, 9).flatMap((n) => [`${belowHundred(n)} hundred`, `${belowHundred(n)} hundred and`]),
  ...count(0, 9).map((n) => `point ${belowHundred(n)}`),
  ...count(0, 9).map((n) => `oh ${belowHundred(n)}`),
  ...count(1, 12).map((n) => `${belowHundred(n)} o’clock`),
  ...['point', 'hundred', 'thousand', 'and', 'minus', 'to', 'am', 'pm', 'noon', 'midnight'],
  ...[
    'gram',
    'ounce',
    'pound',
    'degree',
    'minute',
    'hour',
    'day',
    'second',
    'load',
    'litre',
  ].flatMap((unit) => [unit, `${unit}s`]),
  ...['loaf', 'loaves', 'percent', 'centimetre', 'centimetres', 'metre', 'metres'],
  ...['degree Fahrenheit', 'degrees Fahrenheit', 'Celsius', 'Fahrenheit'],
];
