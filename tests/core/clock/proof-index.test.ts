import fc from 'fast-check';
import { expect, it } from 'vitest';
import { growthForProof, proofIndex } from '../../../src/core/clock/proof-index.ts';

it('the proof index and its inverse come back', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 2, noNaN: true }),
      fc.double({ min: 0.02, max: 0.25, noNaN: true }),
      fc.double({ min: 3, max: 30, noNaN: true }),
      (q, p, celsius) => {
        expect(proofIndex(growthForProof(q, p, celsius), p, celsius)).toBeCloseTo(q, 9);
      },
    ),
  );
});
