import type { Recipe } from '../../formula/recipe.ts';
import type { Celsius, Minutes } from '../../units.ts';
import type { Kitchen } from './types.ts';

/**
 * From the minute a perishable filling goes in, at final shaping, to the oven. Source: USDA, two hours,
 * one above 90 °F (32 °C). No plan is longer; baking does not undo what grew before it.
 */
const WITHIN: Minutes = 120;
const WITHIN_HOT: Minutes = 60;
const HOT: Celsius = 32;

/** Why such a filling has no plan, and what would do instead. */
export interface FillingTrouble {
  readonly key: 'perishableRetarded' | 'perishableLaminated' | 'perishableLoads' | 'perishableSlow';
  /** The filling's name. */
  readonly filling: string;
  readonly within: Minutes;
  readonly wouldDo: readonly ('leaveOut' | 'sameDay' | 'atShaping' | 'oneLoad' | 'coolerKitchen')[];
}

export const perishableIn = ({ formula }: Pick<Recipe, 'formula'>) =>
  formula.fillings.find(({ keeps }) => keeps === 'perishable');

/** Minutes a perishable filling may be out before the oven, in a kitchen of some temperature. */
export const withinOf = ({ temperatureC }: Pick<Kitchen, 'temperatureC'>): Minutes =>
  temperatureC > HOT ? WITHIN_HOT : WITHIN;

/** What a perishable loaf's proof has to leave room for, in minutes: its shaping, and later loads. */
export interface Besides {
  readonly shaping: Minutes;
  /** From the first load to the last, at the longest. */
  readonly later: Minutes;
}

/** A perishable loaf's proof, at the longest. */
export const longestProof = (kitchen: Kitchen, { shaping, later }: Besides): Minutes =>
  withinOf(kitchen) - shaping - later;

/**
 * What forbids a perishable filling in this bake: a night in the cold, a lamination that puts it into
 * the bulk, or a proof that cannot be over in time (`shortest`: of the proof, min). Null: nothing does.
 */
export function fillingTrouble(
  recipe: Recipe,
  kitchen: Kitchen,
  proof: Besides & { readonly shortest: Minutes },
): FillingTrouble | null {
  const filling = perishableIn(recipe);
  if (filling === undefined) return null;
  const trouble = (
    key: FillingTrouble['key'],
    wouldDo: FillingTrouble['wouldDo'],
  ): FillingTrouble => ({ key, filling: filling.name, within: withinOf(kitchen), wouldDo });
  const { process } = recipe;
  if (process.retard > 0) return trouble('perishableRetarded', ['leaveOut', 'sameDay']);
  if (process.touches.some(({ kind }) => kind === 'laminate'))
    return trouble('perishableLaminated', ['leaveOut', 'atShaping']);
  if (longestProof(kitchen, proof) >= proof.shortest) return null;
  if (longestProof(kitchen, { ...proof, later: 0 }) >= proof.shortest)
    return trouble('perishableLoads', ['oneLoad', 'leaveOut']);
  return trouble(
    'perishableSlow',
    kitchen.temperatureC > HOT ? ['leaveOut', 'coolerKitchen'] : ['leaveOut'],
  );
}
