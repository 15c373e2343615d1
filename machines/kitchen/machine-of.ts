import { isLane } from '../../src/core/records/lane.ts';
import type { BakeSnapshot, Kitchen, LaneSnapshot, OvenSnapshot } from './kitchen.ts';

/** The oven, a lane of it, or a bake; undefined where no such one stands in the kitchen. */
export const machineOf = (
  { oven, lanes, bakes }: Kitchen,
  who: string,
): BakeSnapshot | OvenSnapshot | LaneSnapshot | undefined => {
  if (who === 'oven') return oven;
  const all = isLane(who) ? lanes : bakes;
  return Object.hasOwn(all, who) ? all[who] : undefined;
};
