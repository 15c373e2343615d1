import {
  ALLERGENS,
  allergenText,
  hasKinds,
  kindsIn,
  ownTexts,
  standsIn,
} from '../../formula/allergens.ts';
import { ALLERGEN_TEXTS, KIND_TEXTS } from '../../formula/allergen-texts.ts';
import { alsoSaid, hidesIn, plantMilks } from '../../speech/words/label.ts';

/** A piece of a line; `apart`: set apart from the others, for it is an allergen's name. */
export interface Run {
  readonly text: string;
  readonly apart: boolean;
}

const LETTER = '[\\p{L}\\p{N}]';
const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');

/** A word with or without its plural, alone or before another word; never “milk-free”, nor a nut’s milk. */
function pattern(term: string): string {
  const stem = escaped(term.replace(/(?<=...)s$/i, ''));
  const ofPlants = term === 'milk' ? `(?<!(?:${plantMilks.join('|')})[ -])` : '';
  return `(?<!${LETTER})${ofPlants}${stem}(?:s|es)?(?!${LETTER})(?![- ]free)`;
}

const anyOf = (words: readonly string[], flags: string): RegExp =>
  new RegExp(
    words
      .toSorted((a, b) => b.length - a.length)
      .map(pattern)
      .join('|'),
    flags,
  );

/** A name may be anything that a file had: only the table's own words count. */
const wordsOf = (table: typeof alsoSaid, name: string): readonly string[] =>
  (Object.hasOwn(table, name) ? table[name] : undefined) ?? [];
/** All the words that name the same. */
const wordsFor = (name: string): readonly string[] => [name, ...wordsOf(alsoSaid, name)];
const isNamedIn = (text: string, name: string): boolean => anyOf(wordsFor(name), 'iu').test(text);
const hides = (text: string, name: string): boolean => {
  const words = wordsOf(hidesIn, name);
  return words.length > 0 && anyOf(words, 'iu').test(text);
};

/**
 * The names that have to stand by an ingredient: grains and nuts by their kind, the others by their own
 * name, and what a file had besides.
 *
 * @param texts as core/formula/allergens.ts keeps them
 * @example
 * termsOf(['gluten (rye)', 'milk']) // → ['rye', 'milk']
 */
export const termsOf = (texts: readonly string[]): readonly string[] => [
  ...new Set([
    ...ALLERGENS.flatMap((allergen) => {
      if (standsIn(texts, allergen) === 'no') return [];
      return hasKinds(allergen) ? kindsIn(texts, allergen) : [ALLERGEN_TEXTS[allergen]];
    }),
    ...ownTexts(texts),
  ]),
];

/**
 * Allergens whose names stand in a text, as core/formula/allergens.ts keeps them: 'soya' of “soy
 * lecithin”. A word may mislead, so what is found is named on the label (judgement: rather once too
 * often) and the baker is asked to look again.
 *
 * @example
 * saidIn('dark chocolate (cocoa, soy lecithin)') // → ['soya']
 * saidIn('toasted hazelnuts') // → ['tree nuts (hazelnut)']
 */
export const saidIn = (text: string): readonly string[] => {
  const isIn = (name: string): boolean => isNamedIn(text, name) || hides(text, name);
  return ALLERGENS.flatMap((allergen) => {
    if (!hasKinds(allergen)) return isIn(ALLERGEN_TEXTS[allergen]) ? [allergenText(allergen)] : [];
    const kinds = KIND_TEXTS[allergen].filter(isIn);
    // The wheat of “spelt wheat” is no other.
    const own = kinds.filter((kind) => kind !== 'wheat' || !isIn('spelt wheat'));
    return own.map((kind) => allergenText(allergen, kind));
  });
};

/**
 * A text in runs, every place where one of the names stands set apart; the names it has nowhere follow
 * in brackets.
 *
 * @example
 * setApart('cheese', ['milk']) // → [{ text: 'cheese', apart: false }, { text: ' (', apart: false }, { text: 'milk', apart: true }, { text: ')', apart: false }]
 */
export function setApart(text: string, terms: readonly string[]): readonly Run[] {
  const runs: Run[] = [];
  const add = (piece: string, apart: boolean): void => {
    if (piece !== '') runs.push({ text: piece, apart });
  };
  let at = 0;
  if (terms.length > 0) {
    for (const match of text.matchAll(anyOf(terms.flatMap(wordsFor), 'giu'))) {
      add(text.slice(at, match.index), false);
      add(match[0], true);
      at = match.index + match[0].length;
    }
  }
  add(text.slice(at), false);
  const missing = terms.filter((term) => !isNamedIn(text, term));
  if (missing.length === 0) return runs;
  add(' (', false);
  for (const [i, term] of missing.entries()) {
    if (i > 0) add(', ', false);
    add(term, true);
  }
  add(')', false);
  return runs;
}
