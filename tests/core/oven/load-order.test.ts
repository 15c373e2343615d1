import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  byProof,
  byRoom,
  GRADES,
  gradeOf,
  type Proofed,
} from '../../../src/core/oven/load-order.ts';

const proofed = fc.record<Proofed>(
  {
    grade: fc.constantFrom(...GRADES),
    q: fc.option(fc.double({ min: 0, max: 2, noNaN: true })),
  },
  { requiredKeys: [] },
);

describe('how far a loaf has come', () => {
  it('is what was seen, else what its index says', () => {
    const grades = [0.5, 0.84, 0.85, 1.25, 1.35, 1.36, NaN].map((q) => gradeOf({ q }));
    expect(grades).toEqual(['sluggish', 'sluggish', 'ready', 'ready', 'ready', 'over', 'unknown']);
    expect(gradeOf({})).toBe('unknown');
    expect(gradeOf({ q: null })).toBe('unknown');
    expect(gradeOf({ q: 0.5, grade: 'over' })).toBe('over');
  });

  it('orders them: over, ready, unknown, sluggish; in one grade by index, else as they came', () => {
    const list = [
      { id: 'a', q: 0.6 },
      { id: 'b' },
      { id: 'c', q: 1 },
      { id: 'd', q: 1.5 },
      { id: 'e', q: 1.2 },
      { id: 'f', grade: 'ready' as const },
      { id: 'g' },
    ];
    expect(byProof(list).map(({ id }) => id)).toEqual(['d', 'e', 'c', 'f', 'b', 'g', 'a']);
  });

  it('keeps every loaf, and its grade before anything else', () => {
    fc.assert(
      fc.property(fc.array(proofed), fc.func(fc.nat({ max: 6 })), (list, pots) => {
        for (const ordered of [byProof(list), byRoom(list, pots)]) {
          expect(new Set(ordered)).toEqual(new Set(list));
          expect(ordered).toHaveLength(list.length);
          const ranks = ordered.map((one) => GRADES.indexOf(gradeOf(one)));
          expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
        }
      }),
    );
  });

  it('lets the loaf with fewer pots go first within its grade', () => {
    const list = [
      { q: 1.2, fits: 2 },
      { q: 1, fits: 1 },
      { q: 0.5, fits: 1 },
    ];
    expect(byRoom(list, ({ fits }) => fits).map(({ q }) => q)).toEqual([1, 1.2, 0.5]);
  });
});
