import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutShort } from '../../../src/core/speech/cut-short.ts';
import { showMonth } from '../../../src/core/speech/show-month.ts';

describe('a text that is cut short', () => {
  it('is whole where it has room, and in one line', () => {
    expect(cutShort('Good ear', 8)).toBe('Good ear');
    expect(cutShort(' Good\n ear ', 8)).toBe('Good ear');
  });

  it('ends behind a word, or within one that is most of it', () => {
    expect(cutShort('Less water next time', 13)).toBe('Less water…');
    expect(cutShort('Less water, next time', 12)).toBe('Less water…');
    expect(cutShort('A sourdoughandbarleyloaf', 12)).toBe('A sourdough…');
  });

  it('is never longer than its place, and never empty', () => {
    fc.assert(
      fc.property(
        fc.string({ minLength: 1, unit: 'grapheme' }),
        fc.integer({ min: 4, max: 40 }),
        (text, most) => {
          const cut = cutShort(text, most);
          expect([...cut].length).toBeLessThanOrEqual(most);
          if (text.trim() !== '') expect(cut).not.toBe('');
        },
      ),
    );
  });
});

describe('a month', () => {
  it('is shown with its year', () => {
    expect(showMonth('2031-05')).toBe('May 2031');
    expect(showMonth('2031-12')).toBe('Dec 2031');
  });
});
