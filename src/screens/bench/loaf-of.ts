import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import type { Equipment } from '../../core/kitchen/equipment.ts';
import type { Focus } from '../focus.ts';
import { loadSize } from '../load-size.ts';

/** Which of how many: a loaf where each has a pot of its own, else a load. */
export interface Counted {
  readonly load: number;
  readonly loads: number;
}

/** Whether loaves are told apart here: each in a pot, and more than one of them. */
export const hasPots = ({ oven }: Kitchen, { bake }: Focus): boolean =>
  (oven.context.lanes?.length ?? 0) > 1 && bake.context.recipe.process.vessel === 'pot';

/** The loaf a pot's act is about, or that goes in next, by its place in its bake. */
const loafOf = (kitchen: Kitchen, { machine, bake }: Focus): Counted => {
  const { loaves } = bake.context;
  const [inPot] =
    'loaves' in machine.context && !('recipe' in machine.context) ? machine.context.loaves : [];
  const next = kitchen.oven.context.waiting.find((loaf) => loaves.includes(loaf));
  const at = loaves.indexOf(inPot ?? next ?? '');
  return { load: at < 0 ? loaves.length : at + 1, loads: loaves.length };
};

/** Which loaf or load of how many the oven is at, counted in loaves of the bake on show. */
export const countedOf = (kitchen: Kitchen, focus: Focus, equipment: Equipment): Counted => {
  if (hasPots(kitchen, focus)) return loafOf(kitchen, focus);
  const { loaves, recipe } = focus.bake.context;
  const perLoad = loadSize(equipment, recipe.process.vessel);
  const { out } = kitchen.oven.context;
  const done = loaves.filter((loaf) => out.includes(loaf)).length;
  const loads = Math.ceil(loaves.length / perLoad);
  return { load: Math.min(loads, Math.floor(done / perLoad) + 1), loads };
};
