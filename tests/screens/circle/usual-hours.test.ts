import { expect, it } from 'vitest';
import type { Order } from '../../../src/core/circle/circle.ts';
import { usualHours } from '../../../src/screens/circle/orders/usual-hours.ts';

const at = (...minutes: readonly (number | null)[]) => ({
  orders: minutes.map((minute, i) => ({ id: `o${i}`, at: minute }) as unknown as Order),
  standing: [],
});

it('offers six hours from morning to evening before anybody has said one', () => {
  const hours = usualHours(at(null));
  expect(hours).toHaveLength(6);
  expect(hours).toEqual(hours.toSorted((a, b) => a - b));
});

it('offers what this circle asked for most often, each once', () => {
  const hours = usualHours(at(570, 570, 990, 480, 480, 480));
  expect(hours).toHaveLength(6);
  expect(hours).toEqual(expect.arrayContaining([480, 570, 990]));
  expect(new Set(hours).size).toBe(6);
  const many = [1, 2, 3, 4, 5, 6, 7].flatMap((n) => Array<number>(n).fill(n * 100));
  expect(usualHours(at(...many))).toEqual([200, 300, 400, 500, 600, 700]);
});
