import { ALLERGEN_TEXTS, KIND_TEXTS } from '../../formula/allergen-texts.ts';
import {
  ALLERGENS,
  allergenIn,
  allergenText,
  hasKinds,
  kindsIn,
  standsIn,
  type KindedAllergen,
} from '../../formula/allergens.ts';
import type { Formula } from '../../formula/formula.ts';
import { MOST_ALLERGENS } from '../../formula/read-filling.ts';
import { isNamedIn, places, unparted } from './packet-search.ts';
import { saidIn, termsOf } from './set-apart.ts';

/** All that a text names, in whichever tongue; of grains or nuts without a kind that they are to be looked up. */
function namedIn(text: string): readonly string[] {
  const said = saidIn(text);
  const without = ALLERGENS.filter(
    (one) => hasKinds(one) && standsIn(said, one) === 'no' && isNamedIn(text, ALLERGEN_TEXTS[one]),
  );
  return [...without.map((one) => allergenText(one)), ...said];
}

/** Whether a text is names alone, and what holds them together: 'Milch und Cashewnuss', not 'Spuren von Milch'. */
function isNames(text: string, named: readonly string[]): boolean {
  const words = places([
    ...termsOf(named),
    ...ALLERGENS.filter(hasKinds).map((one) => ALLERGEN_TEXTS[one]),
  ]);
  const plain = unparted(text);
  const rest = words === null ? plain : plain.replace(words, ' ');
  return !/\p{L}/u.test(rest.replace(/(?<!\p{L})(?:and|et|und|nuss|nüsse)(?!\p{L})/giu, ' '));
}

/** A grain or a nut by the word that is kept; one that is none of ours as it is written. */
function keptKinds(allergen: KindedAllergen, kind: string): readonly string[] {
  if (KIND_TEXTS[allergen].some((own) => own.toLowerCase() === kind.toLowerCase())) return [kind];
  const found = kindsIn(saidIn(kind), allergen);
  return found.length > 0 ? found : [kind];
}

function kept(text: string): readonly string[] {
  const allergen = allergenIn(text);
  if (allergen === null) {
    const named = namedIn(text);
    return isNames(text, named) && named.length > 0 ? named : [...named, text];
  }
  const kinds = hasKinds(allergen) ? kindsIn([text], allergen) : [];
  const own = kinds.flatMap((kind) => keptKinds(allergen as KindedAllergen, kind));
  return own.join() === kinds.join() ? [text] : [allergenText(allergen, own.join(', '))];
}

/**
 * A list as core/formula/allergens.ts keeps it, out of one that a baker wrote in their own tongue: what is on
 * somebody's list is found by these texts. A text that says more than names stays beside what it names.
 *
 * @param most texts that the list can be read again with
 * @example
 * keptAllergens(['Milch', 'Schalenfrüchte (Walnuss)']) // → ['milk', 'tree nuts (walnut)']
 * keptAllergens(['Spuren von Milch']) // → ['milk', 'Spuren von Milch']
 */
export function keptAllergens(list: readonly string[], most = MOST_ALLERGENS): readonly string[] {
  const each = list.map(kept);
  if (each.every(([first, ...more], i) => first === list[i] && more.length === 0)) return list;
  const all = [...new Set(each.flat())];
  // One that would be too long to be read again stays as it came.
  return all.length > most ? list : all;
}

const withKept = <T extends { readonly allergens?: readonly string[] }>(thing: T): T => {
  const { allergens } = thing;
  const all = allergens && keptAllergens(allergens);
  return all === allergens ? thing : { ...thing, allergens: all };
};

/** A formula with its lists as they are kept; the same object where they were. */
export function withKeptAllergens(formula: Formula): Formula {
  const flours = formula.flours.map(withKept);
  const fillings = formula.fillings.map(withKept);
  const same =
    flours.every((one, i) => one === formula.flours[i]) &&
    fillings.every((one, i) => one === formula.fillings[i]);
  return same ? formula : { ...formula, flours, fillings };
}
