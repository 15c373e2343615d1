/**
 * What a sentence in another tongue is in English. The spoken clips are English: where the tablet has
 * no voice of a tongue, its captions stand in that tongue and the clips are found by these. A sentence
 * is known from where it was made: a catalogue's line as it is read, a filled template as it is filled.
 */
const twins = new Map<string, string>();

/** More than one page makes; the oldest are let go. */
const MOST = 4000;

/** Notes what these words are in English. */
export function remember(words: string, english: string): void {
  if (words === english) return;
  twins.delete(words);
  twins.set(words, english);
  if (twins.size > MOST) twins.delete(twins.keys().next().value as string);
}

/** The English of words that were made of a catalogue; null where they were not. */
export const englishOf = (words: string): string | null => twins.get(words) ?? null;
