import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { vesselOf } from '../../../machines/kitchen/settle.ts';
import { stageOf } from '../../../machines/kitchen/stage-of.ts';
import type { Equipment } from '../../core/kitchen/equipment.ts';
import { takesHeat } from '../../core/kitchen/places.ts';
import { potsOf } from '../../core/kitchen/pots.ts';
import { laneOf, ONE_LANE, TRAY_LANE } from '../../core/records/lane.ts';
import type { Grams } from '../../core/units.ts';
import { loadSize } from '../load-size.ts';
import { nextLane } from '../pot-of.ts';

/** The pots that heat, each a lane; one where no pot is fit (it is told of before). */
export const heatedLanes = (equipment: Equipment): readonly string[] => {
  const fit = potsOf(equipment).filter((_, i) => takesHeat(equipment.pots[i]!));
  return fit.length === 0 ? [ONE_LANE] : fit.map(({ name }) => laneOf(name));
};

/** Most dough each of them takes, g; null where no size was said. */
export const heldBy = (equipment: Equipment): Readonly<Record<string, Grams>> | null => {
  const lanes = heatedLanes(equipment);
  const known = potsOf(equipment).flatMap(({ name, holds }) =>
    holds !== null && lanes.includes(laneOf(name)) ? [[laneOf(name), holds] as const] : [],
  );
  return known.length > 0 ? Object.fromEntries(known) : null;
};

/** What the load press takes: which loaves, and into which lane. */
export const loadInto = (
  kitchen: Kitchen,
  equipment: Equipment,
): { readonly loaves: readonly string[]; readonly lane?: string } => {
  const [flat] = kitchen.oven.context.waiting;
  if (stageOf(kitchen.oven) === 'tray' && flat) return { loaves: [flat], lane: TRAY_LANE };
  const lane = nextLane(kitchen);
  return { loaves: nextLoad(kitchen, equipment), ...(lane === undefined ? {} : { lane }) };
};

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
