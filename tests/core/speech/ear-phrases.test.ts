import { describe, expect, it } from 'vitest';
import { DIGITS, EAR_PHRASES, type EarPhrase } from '../../../src/core/ear/phrases.ts';
import { de } from '../../../src/core/speech/de.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { earPhrases } from '../../../src/core/speech/words/ear-kitchen.ts';

type Said = Readonly<Record<EarPhrase, string>>;
const words = (text: string): readonly string[] => text.toLowerCase().match(/[\p{L}’]+/gu) ?? [];
const isDigit = (phrase: EarPhrase): boolean => (DIGITS as readonly string[]).includes(phrase);

describe.each([
  ['en', earPhrases],
  ['fr', fr['ear-kitchen']!['earPhrases'] as Said],
  ['de', de['ear-kitchen']!['earPhrases'] as Said],
] as const)('what is said to the ear in %s', (_, said: Said) => {
  it('is short, and a digit is one word', () => {
    expect(Object.keys(said)).toEqual([...EAR_PHRASES]);
    for (const phrase of EAR_PHRASES) {
      const { length } = words(said[phrase]);
      expect(length, phrase).toBeGreaterThan(0);
      expect(length, phrase).toBeLessThanOrEqual(isDigit(phrase) ? 1 : 4);
    }
  });

  it('begins and ends unlike any other phrase', () => {
    for (const at of [0, -1]) {
      const ends = EAR_PHRASES.map((phrase) => words(said[phrase]).at(at));
      expect(new Set(ends).size, ends.join()).toBe(EAR_PHRASES.length);
    }
  });
});
