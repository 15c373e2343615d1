import { expect, it } from 'vitest';
import {
  celsiusOf,
  fahrenheitOf,
  gramsOfOunces,
  gramsOfPounds,
  HOUR,
  kelvinsOf,
  MINUTE,
  ouncesOf,
} from '../../src/core/units.ts';

it('sixteen ounces are a pound, sixty minutes an hour', () => {
  expect(gramsOfOunces(16)).toBe(gramsOfPounds(1));
  expect(HOUR).toBe(60 * MINUTE);
});

it('water freezes at 32 °F and boils at 212, and the scales meet at −40', () => {
  expect(celsiusOf(32)).toBe(0);
  expect(celsiusOf(212)).toBe(100);
  expect(celsiusOf(-40)).toBe(-40);
});

it('a difference of two temperatures knows no 32', () => {
  expect(kelvinsOf(180)).toBe(100);
  expect(kelvinsOf(75 - 67)).toBeCloseTo(celsiusOf(75) - celsiusOf(67), 12);
});

it('goes there and back', () => {
  expect(fahrenheitOf(5)).toBe(41);
  for (const n of [-40, 0, 24.5, 260]) expect(celsiusOf(fahrenheitOf(n))).toBeCloseTo(n, 12);
  for (const n of [0, 0.3, 900, 12_667]) expect(gramsOfOunces(ouncesOf(n))).toBeCloseTo(n, 9);
});
