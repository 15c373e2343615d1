import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { weighInsOf } from '../../machines/kitchen/weigh-ins.ts';
import { makeRecipe } from '../core/formula/make-recipe.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import type { Recipe } from '../core/formula/recipe.ts';
import type { Deed } from '../core/records/fact.ts';
import { pieceHere } from '../core/oven/piece-here.ts';
import { tellNotice } from '../core/speech/tell-notice.ts';
import type { Celsius } from '../core/units.ts';
import type { House, Order } from '../screens/house.ts';
import type { World } from './world.ts';

/** A recipe for this kitchen's own fridge, where its temperature is known: it decides the cold proof. */
const inFridge = (recipe: Recipe, celsius: Celsius | null): Recipe =>
  celsius === null ? recipe : { ...recipe, process: { ...recipe.process, fridge: celsius } };

/**
 * Begins a bake with its recipe pinned, and gives its id; null where it could not be begun, which is
 * told. `remember` keeps the kitchen's temperature for the next start; of the equipment
 * the scale's steps and the fridge's temperature are pinned with it, where they are known.
 */
export async function beginBake(
  order: Order,
  kitchen: () => Kitchen,
  world: Pick<World, 'ways' | 'askToKeep'>,
  { scale, fridge }: Pick<Equipment, 'scale' | 'fridge'>,
  take: (deed: Deed) => Promise<void>,
  tell: House['tell'],
  remember: (celsius: Celsius) => void,
): Promise<string | null> {
  const bake = `bake-${kitchen().seq + 1}`;
  const { loaves, formula, bread = null } = order;
  const piece = pieceHere(formula, bread, weighInsOf(kitchen()));
  const made = makeRecipe(formula, { loaves, piece, scale });
  if (made.recipe === null) {
    tell({ id: 'recipe', text: tellNotice(made.reason, world.ways.ways()), action: null });
    return null;
  }
  await take({
    kind: 'start',
    bake,
    loaves: Array.from({ length: order.loaves }, (_, i) => `${bake}.${i + 1}`),
    from: order.from,
    recipe: inFridge(made.recipe, fridge.celsius),
    kitchen: order.kitchen,
  });
  remember(order.kitchen);
  void world.askToKeep();
  return bake in kitchen().bakes ? bake : null;
}
