import { makeRecipe } from '../core/formula/make-recipe.ts';
import type { Deed } from '../core/records/fact.ts';
import { tellNotice } from '../core/speech/tell-notice.ts';
import type { Units } from '../core/units.ts';
import type { Order } from '../screens/house.ts';

/** The first fact of a bake, with its recipe pinned; or the sentence why there is none. */
export function startDeed(
  order: Order,
  bake: string,
  units: Units,
): { readonly deed: Deed; readonly why: null } | { readonly deed: null; readonly why: string } {
  const made = makeRecipe(order.formula, { loaves: order.loaves, piece: order.formula.piece });
  if (made.recipe === null) return { deed: null, why: tellNotice(made.reason, units) };
  return {
    deed: {
      kind: 'start',
      bake,
      loaves: Array.from({ length: order.loaves }, (_, i) => `${bake}.${i + 1}`),
      from: order.from,
      recipe: made.recipe,
      kitchen: order.kitchen,
    },
    why: null,
  };
}
