import {
  ALLERGENS,
  allergenText,
  hasKinds,
  kindsIn,
  ownTexts,
  standsIn,
} from '../../formula/allergens.ts';
import { ALLERGEN_TEXTS, KIND_TEXTS } from '../../formula/allergen-texts.ts';
import { showAllergen, showKind } from '../../speech/show-allergen.ts';
import { tongue } from '../../speech/tongue.ts';
import { isHiddenIn, isNamedIn, places, unparted, withoutWords } from './packet-search.ts';

/** A piece of a line; `apart`: set apart from the others, for it is an allergen's name. */
export interface Run {
  readonly text: string;
  readonly apart: boolean;
}

/** A term in the tongue that stands: an allergen's name, or the kind of one. */
const shownTerm = (term: string): string => showKind(showAllergen(term));

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
 * Allergens whose names stand in a text, in whichever tongue, as core/formula/allergens.ts keeps them: 'soya' of “soy
 * lecithin”. A word may mislead, so what is found is named on the label (judgement: rather once too
 * often) and the baker is asked to look again.
 *
 * @example
 * saidIn('dark chocolate (cocoa, soy lecithin)') // → ['soya']
 * saidIn('toasted hazelnuts') // → ['tree nuts (hazelnut)']
 */
export const saidIn = (text: string): readonly string[] => {
  const isIn = (name: string, where = text): boolean =>
    isNamedIn(where, name) || isHiddenIn(where, name);
  return ALLERGENS.flatMap((allergen) => {
    if (!hasKinds(allergen)) return isIn(ALLERGEN_TEXTS[allergen]) ? [allergenText(allergen)] : [];
    // The wheat of “spelt wheat” is no other.
    const own = KIND_TEXTS[allergen].filter((kind) =>
      isIn(kind, kind === 'wheat' ? withoutWords(text, 'spelt wheat') : text),
    );
    return own.map((kind) => allergenText(allergen, kind));
  });
};

/**
 * A text in runs, every place where one of the names stands set apart; the names it has nowhere
 * in the tongue that stands follow in brackets.
 *
 * @example
 * setApart('cheese', ['milk']) // → [{ text: 'cheese', apart: false }, { text: ' (', apart: false }, { text: 'milk', apart: true }, { text: ')', apart: false }]
 */
export function setApart(line: string, terms: readonly string[]): readonly Run[] {
  const text = unparted(line);
  const runs: Run[] = [];
  const add = (piece: string, apart: boolean): void => {
    if (piece !== '') runs.push({ text: piece, apart });
  };
  let at = 0;
  const words = places(terms);
  if (words !== null) {
    for (const match of text.matchAll(words)) {
      add(text.slice(at, match.index), false);
      add(match[0], true);
      at = match.index + match[0].length;
    }
  }
  add(text.slice(at), false);
  const missing = terms.filter((term) => !isNamedIn(text, term, [tongue()]));
  if (missing.length === 0) return runs;
  add(' (', false);
  for (const [i, term] of missing.entries()) {
    if (i > 0) add(', ', false);
    add(shownTerm(term), true);
  }
  add(')', false);
  return runs;
}
