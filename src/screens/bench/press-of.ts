import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import type { Equipment } from '../../core/kitchen/equipment.ts';
import type { BakeAct, Deed, OvenAct } from '../../core/records/fact.ts';
import type { Focus } from '../focus.ts';
import { REPEATABLE } from './acts.ts';
import { heatedLanes, heldBy, loadInto } from './next-load.ts';

const potsThatHeat = (equipment: Equipment) => {
  const holds = heldBy(equipment);
  return { lanes: heatedLanes(equipment), ...(holds === null ? {} : { holds }) };
};

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
  ...(act === 'ovenOn' ? potsThatHeat(equipment) : {}),
  ...(act === 'starterKept' ? { grams: bake.context.recipe.keepBack } : {}),
  ...(REPEATABLE.includes(act) ? { seen: kitchen.seq } : {}),
});
