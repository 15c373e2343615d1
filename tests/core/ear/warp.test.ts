import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Frames } from '../../../src/core/ear/frames.ts';
import { warpDistance } from '../../../src/core/ear/warp.ts';

const frames = (...rows: readonly (readonly number[])[]): Frames => ({
  count: rows.length,
  size: rows[0]?.length ?? 2,
  data: Float32Array.from(rows.flat()),
});

describe('how far two sayings are apart', () => {
  it('is nothing where one is the other, and nothing where it was said more slowly', () => {
    const said = frames([0, 0], [3, 4], [6, 8], [0, 0]);
    const slow = frames([0, 0], [0, 0], [3, 4], [3, 4], [6, 8], [6, 8], [0, 0]);
    expect(warpDistance(said, said)).toBe(0);
    expect(warpDistance(said, slow)).toBe(0);
  });

  it('is what the sums on paper give', () => {
    // One frame against one: its distance of 5 counts twice and is shared among the two frames.
    expect(warpDistance(frames([0, 0]), frames([3, 4]))).toBe(5);
    // 0 1 against 0 2: the diagonal, 0 then 1, each twice, among four frames.
    expect(warpDistance(frames([0], [1]), frames([0], [2]))).toBe(0.5);
    // 0 2 against 0 1 2: over the 1 by a step that weighs once; 1 of five frames.
    expect(warpDistance(frames([0], [2]), frames([0], [1], [2]))).toBeCloseTo(1 / 5, 12);
  });

  it('is without end for nothing, and for what is more than twice as long', () => {
    expect(warpDistance(frames(), frames())).toBe(Infinity);
    expect(warpDistance(frames([0, 0]), frames())).toBe(Infinity);
    const one = [1, 1] as const;
    expect(warpDistance(frames(one, one), frames(one, one, one, one, one))).toBe(Infinity);
  });

  it('is not asked of two kinds of frame', () => {
    expect(() => warpDistance(frames([0]), frames([0, 0]))).toThrow(
      'Sayings of two kinds of frame cannot be compared.',
    );
  });

  it('is the same both ways, and never less than nothing', () => {
    const row = fc.array(fc.float({ min: -9, max: 9, noNaN: true }), {
      minLength: 3,
      maxLength: 3,
    });
    const saying = fc.array(row, { minLength: 6, maxLength: 10 }).map((rows) => frames(...rows));
    fc.assert(
      fc.property(saying, saying, (a, b) => {
        const far = warpDistance(a, b);
        expect(far).toBeGreaterThanOrEqual(0);
        expect(warpDistance(b, a)).toBeCloseTo(far, 4);
      }),
    );
  });
});
