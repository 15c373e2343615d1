import { syllables } from '../../../../src/core/speech/syllables.ts';
import { sentencesOf, wordsOf } from './catalogue.ts';

/** Flesch–Kincaid grade: 0.39·words/sentence + 11.8·syllables/word − 15.59, on pooled texts. */
export function grade(texts: readonly string[]): number {
  const sentences = texts.flatMap(sentencesOf);
  const words = sentences.flatMap(wordsOf);
  const sounds = words.reduce((sum, word) => sum + syllables(word), 0);
  return 0.39 * (words.length / sentences.length) + 11.8 * (sounds / words.length) - 15.59;
}
