import { sentencesOf, wordsOf } from './catalogue.ts';

/**
 * Syllables of an English word by its vowel groups: a silent e at the end is not one, "le" after a
 * consonant is, and neither "-es" nor "-ed" counts unless it is heard. Within one of the dictionary
 * for kitchen words; numbers count their digits.
 */
export function syllables(word: string): number {
  const letters = word.toLowerCase().replace(/[^a-z]/g, '');
  if (letters === '') return Math.max(1, word.replace(/\D/g, '').length);
  const ending = letters
    .replace(/([^aeiou])le$/, '$1il')
    .replace(/([^td])ed$/, '$1')
    .replace(/([^aeioucglsxz]|[^cs]h)es$/, '$1')
    .replace(/([^aeiou])e$/, '$1');
  return Math.max(1, ending.match(/[aeiouy]+/g)?.length ?? 0);
}

/** Flesch–Kincaid grade: 0.39·words/sentence + 11.8·syllables/word − 15.59, on pooled texts. */
export function grade(texts: readonly string[]): number {
  const sentences = texts.flatMap(sentencesOf);
  const words = sentences.flatMap(wordsOf);
  const sounds = words.reduce((sum, word) => sum + syllables(word), 0);
  return 0.39 * (words.length / sentences.length) + 11.8 * (sounds / words.length) - 15.59;
}
