import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Spot } from '../../../../src/core/log/drawing.ts';
import { sideBySide } from '../../../../src/core/log/plots/side-by-side.ts';

const PLACE = { left: 0, right: 180, top: 0, bottom: 60 };
const spot = fc.tuple(
  fc.double({ min: 0, max: 180, noNaN: true }),
  fc.double({ min: 0, max: 60, noNaN: true }),
);
const far = ([a, b]: Spot, [c, d]: Spot): number => Math.hypot(a - c, b - d);

it('leaves marks that are apart where they are', () => {
  const spots: readonly Spot[] = [
    [10, 10],
    [14, 10],
    [10, 14],
  ];
  expect(sideBySide(spots, PLACE)).toEqual(spots);
});

it('puts marks of one place beside each other, the first of them on it', () => {
  const [first, ...others] = sideBySide(Array<Spot>(7).fill([90, 30]), PLACE);
  expect(first).toEqual([90, 30]);
  others.forEach((one, n) => {
    expect(one[1]).toBe(30);
    for (const other of [first!, ...others.slice(0, n)])
      expect(far(one, other)).toBeGreaterThan(2.8);
  });
});

it('moves none further than a few marks, and none out of its place', () => {
  fc.assert(
    fc.property(fc.array(spot, { maxLength: 80 }), (spots) => {
      sideBySide(spots, PLACE).forEach((one, n) => {
        expect(far(one, spots[n]!)).toBeLessThan(9.5);
        expect(one[0] >= 0 && one[0] <= 180 && one[1] >= 0 && one[1] <= 60).toBe(true);
      });
    }),
  );
});
