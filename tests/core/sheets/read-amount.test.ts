import { expect, it } from 'vitest';
import { decimalSignOf, hasTwoReadings, readAmount } from '../../../src/core/sheets/read-amount.ts';

it.each([
  ['500', 500, null],
  [' 12,5 ', 12.5, null],
  ['12.5%', 12.5, '%'],
  ['12,5 %', 12.5, '%'],
  ['1 250 g', 1250, 'g'],
  ['1\u00a0250,5 g', 1250.5, 'g'],
  ['1,250.5', 1250.5, null],
  ['1.250.000', 1_250_000, null],
  ['0,500 kg', 500, 'g'],
  ['1.5kg', 1500, 'g'],
  ['2 oz', 56.69904625, 'g'],
  ['1 lb', 453.59237, 'g'],
  ['.5', 0.5, null],
  ['+3', 3, null],
  ['0', 0, null],
] as const)('%j is %d %s', (cell, value, unit) => {
  expect(readAmount(cell)).toEqual({ value, unit });
});

it.each([
  '',
  'a pinch',
  '-3',
  '-3 g',
  '1/2',
  '5 cups',
  '1e3',
  '12..5',
  '1,25,000.5',
  '10 5 g',
  '1.2.3,4,5',
  '%',
  'g',
  '٣',
  '1,500',
  '--2',
])('%j is no number of 0 or more that reads one way', (cell) =>
  expect(readAmount(cell)).toBeNull(),
);

it.each([[-1], [Number.NaN], [Number.POSITIVE_INFINITY], [null], [undefined]])(
  'a cell that holds %s is none either',
  (cell) => expect(readAmount(cell)).toBeNull(),
);

it('what reads two ways is read as the rest of the sheet is, or asked', () => {
  expect(hasTwoReadings([['1,500', '2']])).toBe(true);
  expect(decimalSignOf([['1,500', '2']])).toBeNull();
  expect(decimalSignOf([['1,500', '2,5']])).toBe('comma');
  expect(decimalSignOf([['1,500', '2.5']])).toBe('point');
  expect(decimalSignOf([['2,5', '2.5']])).toBeNull();
  expect(readAmount('1,500', 'comma')).toEqual({ value: 1.5, unit: null });
  expect(readAmount('1,500', 'point')).toEqual({ value: 1500, unit: null });
  expect(readAmount('1.500', 'comma')).toEqual({ value: 1500, unit: null });
});
