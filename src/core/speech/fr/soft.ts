import type * as english from '../words/soft.ts';
import type { InTongue } from '../tongue.ts';

const VOWEL = '[aeiouyàâéèêëîïôûùœ]';
const CONSONANT = '[bcçdfghjklmnpqrstvxz]';
/** Two consonants that begin a syllable together. */
const PAIR = '(?:[bcdfgptv]r|[bcfgp]l|[cpt]h|gn|qu)';

/**
 * A syllable begins before the consonant, or the pair, that stands before a vowel; two letters at least stay
 * in the line and three go on. The rule of French typesetting, from memory.
 */
const SYLLABLE = new RegExp(
  `(?<=\\p{L}(?:${VOWEL}|${VOWEL}${CONSONANT}))(?<!${CONSONANT}(?=[lr])|[cpt](?=h)|g(?=n))` +
    `(?=(?:${PAIR}|${CONSONANT})${VOWEL}\\p{L})(?=\\p{L}{3})`,
  'giu',
);
/** Shorter words have room wherever anything has. */
const LONG = /\p{L}{8,}/gu;

/** The same words, with soft hyphens where a line may end inside one, and a long pair of words parted at its hyphen. */
const soften = (text: string): string =>
  text
    .replace(LONG, (word) => word.replace(SYLLABLE, '\u00AD'))
    .replace(/(?<=\p{L}{4})-(?=\p{L}{4})/gu, '-\u200B');

export const soft: InTongue<typeof english.soft> = { soften };
