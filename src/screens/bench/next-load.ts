import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { vesselOf } from '../../../machines/kitchen/settle.ts';
import type { Equipment } from '../../core/kitchen/equipment.ts';
import { loadSize } from '../load-size.ts';

/**
 * As many loaves of the next bake as there are places, of the kind that was made ready. Another bake's
 * have minutes of their own: only the baker puts them in together.
 */
export const nextLoad = (kitchen: Kitchen, equipment: Equipment): readonly string[] => {
  const { waiting, vessel } = kitchen.oven.context;
  const [first] = waiting.filter((loaf) => vesselOf(kitchen, [loaf]) === vessel);
  const bake = Object.values(kitchen.bakes).find(({ context }) =>
    context.loaves.includes(first ?? ''),
  );
  return waiting
    .filter((loaf) => bake?.context.loaves.includes(loaf))
    .slice(0, loadSize(equipment, vessel));
};
