import { makeRecipe, type MadeRecipe } from '../../../core/formula/make-recipe.ts';
import type { Formula } from '../../../core/formula/formula.ts';
import type { LogRecord } from '../../../core/records/record.ts';
import type { House } from '../../house.ts';

/** Loaves of a bread that was never baked here. Judgement. */
const LOAVES = 4;

/** As many loaves as it was baked last, or four. */
export const usualLoaves = (records: readonly LogRecord[], formula: string): number => {
  const last = records.findLast(
    ({ fact }) => fact.kind === 'start' && fact.recipe.formula.id === formula,
  )?.fact;
  return last?.kind === 'start' ? last.recipe.loaves : LOAVES;
};

/** A bread as this kitchen would weigh it for so many loaves. */
export const recipeFor = (
  house: Pick<House, 'equipment'>,
  formula: Formula,
  loaves: number,
): MadeRecipe =>
  makeRecipe(formula, { loaves, piece: formula.piece, scale: house.equipment().scale });
