import type { Formula } from '../../core/formula/formula.ts';
import { formulaWarnings } from '../../core/formula/formula-warnings.ts';
import { makeRecipe } from '../../core/formula/make-recipe.ts';
import { processWarnings } from '../../core/formula/process-warnings.ts';
import { tellNotice } from '../../core/speech/tell-notice.ts';
import type { Grams, Units } from '../../core/units.ts';

/**
 * Why a formula cannot be weighed, or what is unusual about it: its dough, its fillings and its steps, a
 * sentence each. `of`: so many loaves of so much dough; left out: one of its own.
 */
export function unusual(
  formula: Formula,
  units: Units,
  of: { readonly loaves: number; readonly piece: Grams } = { loaves: 1, piece: formula.piece },
): readonly string[] {
  const made = makeRecipe(formula, of);
  const told = made.recipe?.warnings ?? [
    made.reason!,
    ...formulaWarnings(formula, of.loaves * of.piece),
    ...processWarnings(formula.process),
  ];
  return told.map((notice) => tellNotice(notice, units));
}
