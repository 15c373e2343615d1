import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import type { Equipment } from '../../core/kitchen/equipment.ts';
import type { BakeAct, Deed, OvenAct } from '../../core/records/fact.ts';
import type { Focus } from '../focus.ts';
import { REPEATABLE } from './acts.ts';
import { heatedLanes, loadInto } from './next-load.ts';

/** The deed of a plain act, with all that the fact of it has to say. */
export const pressOf = (
  kitchen: Kitchen,
  { who, bake }: Focus,
  act: BakeAct | OvenAct,
  equipment: Equipment,
): Extract<Deed, { kind: 'press' }> => ({
  kind: 'press',
  who,
  act,
  ...(act === 'loaded' ? loadInto(kitchen, equipment) : {}),
  ...(act === 'ovenOn' ? { lanes: heatedLanes(equipment) } : {}),
  ...(act === 'starterKept' ? { grams: bake.context.recipe.keepBack } : {}),
  ...(REPEATABLE.includes(act) ? { seen: kitchen.seq } : {}),
});
