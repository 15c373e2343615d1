import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  isPaced,
  longestFor,
  PACES,
  rateOf,
  stretchFor,
  wordsIn,
} from '../../../src/core/speech/pace.ts';

const spoken = (text: string, seconds: number, pauses = 0) => ({
  words: wordsIn(text),
  seconds: seconds - pauses,
  pauses,
});
/** Nine words, ten syllables. */
const PLAIN = 'cover the bowl and leave the dough to rise';

describe('how fast something is said', () => {
  it('is counted in words and in syllables, a number’s parts each by itself', () => {
    expect(rateOf(spoken('twenty-five grams', 1.2))).toEqual({
      wpm: expect.closeTo(150) as number,
      syllables: expect.closeTo(4 / 1.2) as number,
    });
  });

  it.each([
    [PLAIN, 3.6, true, false],
    [PLAIN, 3.3, false, false],
    [PLAIN, 4.4, false, true],
    [PLAIN, 5.2, false, false],
    // Long words make few of them a minute, and are not slow: 16 syllables.
    ['seventeen minutes later, ready about nineteen fifteen', 4, true, false],
    // Too few to be slow, never too few to be too fast for a child.
    ['midnight', 1.5, true, true],
    ['midnight', 0.5, true, false],
  ])('%s, in %f s: for grown-ups %s, for small hands %s', (text, seconds, grown, small) => {
    expect(isPaced(spoken(text, seconds), 'grown')).toBe(grown);
    expect(isPaced(spoken(text, seconds), 'small')).toBe(small);
  });
});

describe('how far it is stretched', () => {
  it('is not at all where it is as fast as it should be', () => {
    expect(stretchFor(spoken(PLAIN, 3.6), 'grown')).toBe(1);
    expect(stretchFor(spoken(PLAIN, 4.4), 'small')).toBe(1);
    expect(stretchFor(spoken('', 0), 'small')).toBe(1);
  });

  it('is as far as brings it inside, whatever it was, unless that would drawl or gabble', () => {
    const words = fc.array(fc.constantFrom('hot', 'dough', 'seventeen', 'levain', 'centimetres'), {
      minLength: 1,
      maxLength: 20,
    });
    const pace = fc.constantFrom(...(['grown', 'small'] as const));
    fc.assert(
      fc.property(
        words,
        fc.double({ min: 0.2, max: 0.7, noNaN: true }),
        pace,
        (said, each, how) => {
          const before = { words: said, seconds: said.length * each, pauses: said.length * 0.05 };
          const by = stretchFor(before, how);
          expect(by).toBeGreaterThanOrEqual(0.75);
          expect(by).toBeLessThanOrEqual(1.4);
          if (by > 0.75 && by < 1.4)
            expect(isPaced({ ...before, seconds: before.seconds * by }, how)).toBe(true);
        },
      ),
    );
  });

  it('is less where it would take more than 8 s, as far as the pace allows', () => {
    const words = wordsIn('thirteen point four, one three point four, ounces of water'.repeat(2));
    const slow = { words, seconds: 8.3, pauses: 0 };
    expect(isPaced(slow, 'grown')).toBe(true);
    expect(8.3 * stretchFor(slow, 'grown')).toBeCloseTo(8);
    const plain = { words: wordsIn(`${PLAIN} ${PLAIN}`), seconds: 7.3, pauses: 0 };
    expect(7.3 * stretchFor(plain, 'small')).toBeGreaterThan(8);
  });

  it('is slower for small hands than for grown-ups', () => {
    expect(PACES.small.most).toBeLessThan(PACES.grown.least);
    expect(stretchFor(spoken(PLAIN, 3.6), 'small')).toBeCloseTo(150 / 130, 1);
  });
});

it('brought to its pace, nothing takes longer than what is foretold of it', () => {
  const words = fc.array(fc.constantFrom('hot', 'dough', 'seventeen', 'levain', 'centimetres'), {
    minLength: 4,
    maxLength: 20,
  });
  const pace = fc.constantFrom(...(['grown', 'small'] as const));
  fc.assert(
    fc.property(words, fc.double({ min: 0.3, max: 0.5, noNaN: true }), pace, (said, each, how) => {
      const before = { words: said, seconds: said.length * each, pauses: 0.3 };
      const after = before.seconds * stretchFor(before, how) + before.pauses;
      if (stretchFor(before, how) > 0.75)
        expect(after).toBeLessThanOrEqual(longestFor(said, how) + 1e-9);
    }),
  );
});
