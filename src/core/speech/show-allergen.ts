import { ALLERGEN_TEXTS } from '../formula/allergen-texts.ts';
import { allergenIn } from '../formula/allergens.ts';
import { allergenNames, allergenAsked, kindNames } from './words/allergens.ts';
import { fill } from './fill.ts';
import { tongue, twinned } from './tongue.ts';

const KINDS: Readonly<Record<string, string>> = kindNames;
const BRACKETS = /^ \((.+)\)$/;

/**
 * A grain or a nut in the tongue that stands; one that is none of ours stays as it is written.
 *
 * @example showKind('walnut') // in German: 'Walnuss'
 */
export const showKind = (kind: string): string => {
  if (tongue() === 'en') return kind;
  const own = Object.keys(kindNames).find((one) => one.toLowerCase() === kind.toLowerCase());
  return own === undefined ? kind : KINDS[own]!;
};

function shown(text: string): string {
  const allergen = tongue() === 'en' ? null : allergenIn(text);
  if (allergen === null) return text;
  const name = allergenNames[allergen];
  const rest = text.trim().slice(ALLERGEN_TEXTS[allergen].length);
  if (/^, if the packet says so$/i.test(rest)) return fill(allergenAsked.ifSaid, { name });
  if (/^ \(name the nut\)$/i.test(rest)) return fill(allergenAsked.nut, { name });
  if (/^ \(name the grain\)$/i.test(rest)) return fill(allergenAsked.grain, { name });
  const kinds = BRACKETS.exec(rest)?.[1];
  if (kinds === undefined) return `${name}${rest}`;
  return `${name} (${kinds.split(/, */).map(showKind).join(', ')})`;
}

/**
 * What is kept of an allergen, in the tongue that stands: every page, paper and label shows it by this.
 * A text that came with a file and is none of ours stays as it is written.
 *
 * @param text as core/formula/allergens.ts keeps it
 * @example showAllergen('tree nuts (walnut)') // in German: 'Schalenfrüchte (Walnuss)'
 */
export const showAllergen = (text: string): string => twinned(() => shown(text));

/** Several of them, as one list. */
export const showAllergens = (texts: readonly string[]): string =>
  twinned(() => texts.map(shown).join(', '));
/** Several kinds of one, as one list. */
export const showKinds = (kinds: readonly string[]): string =>
  twinned(() => kinds.map(showKind).join(', '));
