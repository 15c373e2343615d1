import { expect, it } from 'vitest';
import {
  celsiusOf,
  gramsOfOunces,
  gramsOfPounds,
  HOUR,
  kelvinsOf,
  MINUTE,
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
