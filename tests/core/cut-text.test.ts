import { describe, expect, it } from 'vitest';
import { cutText } from '../../src/core/cut-text.ts';

// What is one letter: grapheme clusters by Unicode's UAX #29; each written here as the units it is made of.
describe('a text that is cut', () => {
  it.each([
    ['rye', 3, 'rye'],
    ['rye', 2, 'ry'],
    ['', 0, ''],
    ['rye', 0, ''],
    // A pair of units, U+1F956.
    ['rye \ud83e\udd56', 5, 'rye '],
    ['rye \ud83e\udd56', 6, 'rye \ud83e\udd56'],
    // An accent behind its letter.
    ['creme\u0301', 5, 'crem'],
    // A family: three signs that are joined; a flag: two that are read as one; a hand and its colour.
    ['a👨\u200d👩\u200d👧b', 5, 'a'],
    ['a\ud83c\uddeb\ud83c\uddf7', 3, 'a'],
    ['a\ud83d\udc4d\ud83c\udffd', 3, 'a'],
  ])('%j to %d ends behind a whole letter', (text, most, cut) => {
    expect(cutText(text, most)).toBe(cut);
  });

  it('is no letter without end, and still no half of a sign', () => {
    expect(cutText('Z' + '\u0301'.repeat(500), 120)).toBe('Z' + '\u0301'.repeat(119));
    expect(cutText('👨\u200d'.repeat(100), 4)).toBe('👨\u200d');
  });

  it('is not looked at to its end', () => {
    // Taken apart as a whole, a megabyte is half a second of work.
    const long = '🥖'.repeat(500_000);
    const began = process.cpuUsage();
    for (let n = 0; n < 10; n += 1) cutText(long, 120);
    const { user } = process.cpuUsage(began);
    expect(user / 1e6).toBeLessThan(0.5);
  });
});
