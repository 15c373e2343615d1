import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { learnedOffset, MOST_OFFSET, usualOffset } from '../../../src/core/heat/learned.ts';

describe('what earlier mixes teach', () => {
  it('is nothing before the first, half of one, and the whole median from five on', () => {
    expect(learnedOffset([])).toBe(0);
    expect(learnedOffset([2])).toBeCloseTo(1, 12);
    expect(learnedOffset([2, 2])).toBeCloseTo(4 / 3, 12);
    expect(learnedOffset([2, 2, 2, 2])).toBeCloseTo(1.6, 12);
    expect(learnedOffset([2, 2, 2, 2, 2])).toBeCloseTo(2, 12);
  });

  it('forgets all but the last five', () => {
    expect(learnedOffset([9, 9, 9, 1, 1, 1, 1, 1])).toBeCloseTo(1, 12);
    expect(usualOffset([4, 4, 4, 4, 4, -1, -1, -1, -1, -1])).toBe(-1);
  });

  it('is not moved by one slip of the probe among five', () => {
    const steady = fc.array(fc.double({ min: -2, max: 2, noNaN: true }), {
      minLength: 4,
      maxLength: 4,
    });
    const slip = fc.double({ min: -60, max: 60, noNaN: true });
    fc.assert(
      fc.property(steady, slip, fc.nat(4), (offsets, wild, at) => {
        const all = offsets.toSpliced(at, 0, wild);
        expect(usualOffset(all)).toBeGreaterThanOrEqual(Math.min(...offsets));
        expect(usualOffset(all)).toBeLessThanOrEqual(Math.max(...offsets));
      }),
    );
  });

  it('never moves a mix by more than is believable', () => {
    const any = fc.array(fc.double({ min: -90, max: 90, noNaN: true }));
    fc.assert(
      fc.property(any, (offsets) => {
        expect(Math.abs(learnedOffset(offsets))).toBeLessThanOrEqual(MOST_OFFSET);
      }),
    );
  });
});
