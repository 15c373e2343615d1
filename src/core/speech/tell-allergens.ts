import { allergensOf } from '../formula/allergens.ts';
import type { Formula } from '../formula/formula.ts';
import { allergenPage, allergensTold } from './words/allergens.ts';
import { fill } from './fill.ts';
import { showAllergens } from './show-allergen.ts';
import { showParts } from './show-part.ts';

/**
 * What a bread brings that somebody may not eat, which of its fillings nobody has answered for, and the
 * caution: a sentence each.
 */
export function tellAllergens(formula: Pick<Formula, 'flours' | 'fillings'>): readonly string[] {
  const { brings, unanswered } = allergensOf(formula);
  return [
    fill(allergensTold.brings, { allergens: showAllergens(brings) }),
    ...(unanswered.length > 0
      ? [fill(allergensTold.unanswered, { name: showParts(unanswered) })]
      : []),
    allergenPage.caution,
  ];
}
