import { expect, it } from 'vitest';
import { markShape, MARKS, type Outline } from '../../../src/parts/mark-shapes.ts';

/**
 * A mark of 12 mm is 20 minutes of arc at 2 m, and an eye that reads one minute sees it as 20 by 20
 * greys. (ISO 9241-3: 20 to 22 minutes for what is read at ease.) Each grey is the ink of 25 points.
 */
const SEEN = 20;
const FINE = 5;

/** How often a line to the right crosses the outlines: odd is ink. */
const crossings = (outlines: readonly Outline[], x: number, y: number): number =>
  outlines
    .flatMap((points) => points.map((p, i) => [p, points[(i + 1) % points.length]!] as const))
    .filter(([[ax, ay], [bx, by]]) => {
      if (ay > y === by > y) return false;
      return ax + ((y - ay) / (by - ay)) * (bx - ax) > x;
    }).length;

const greys = (mark: number): number[] => {
  const { outlines } = markShape(mark);
  const step = 24 / SEEN / FINE;
  return Array.from({ length: SEEN * SEEN }, (_, cell) => {
    const [row, column] = [Math.floor(cell / SEEN), cell % SEEN];
    let ink = 0;
    for (let i = 0; i < FINE * FINE; i += 1) {
      const x = (column * FINE + (i % FINE) + 0.5) * step;
      const y = (row * FINE + Math.floor(i / FINE) + 0.5) * step;
      ink += crossings(outlines, x, y) % 2;
    }
    return ink / (FINE * FINE);
  });
};

const marks = Array.from({ length: MARKS }, (_, i) => i + 1);

it('differ from one another in a sixth of what an eye sees of them at 2 m, without colour', () => {
  const seen = marks.map(greys);
  for (const [i, one] of seen.entries()) {
    for (const [j, other] of seen.entries()) {
      if (i >= j) continue;
      const apart = one.reduce((sum, grey, k) => sum + Math.abs(grey - other[k]!), 0) / one.length;
      expect(apart, `${markShape(i + 1).name} and ${markShape(j + 1).name}`).toBeGreaterThan(1 / 6);
    }
  }
});

it('stay within their place, with as many notches as their number, each inside its shape', () => {
  for (const mark of marks) {
    const { outlines, name } = markShape(mark);
    const [shape, ...notches] = outlines;
    expect(notches, name).toHaveLength(mark);
    for (const [x, y] of outlines.flat()) {
      expect(Math.min(x, y), name).toBeGreaterThanOrEqual(0);
      expect(Math.max(x, y), name).toBeLessThanOrEqual(24);
    }
    for (const [start, , end] of notches) {
      const middle = [0, 1].map((i) => (start![i]! + end![i]!) / 2) as [number, number];
      expect(crossings([shape!], ...middle) % 2, name).toBe(1);
    }
  }
});

it('begin again after the last, so that no bake is without one', () => {
  expect(markShape(MARKS + 1)).toBe(markShape(1));
});
