import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { LaneVessel } from '../core/records/position.ts';

/** What bread bakes in, as the names of the oven's steps tell it apart. */
export type Heats = LaneVessel | 'pots' | 'rack';

/** What a lane bakes in, and the oven is made ready for: several pots that heat together are `pots`. */
export function heatsIn(kitchen: Kitchen, who: string): Heats {
  const lane = kitchen.lanes[who]?.context;
  if (lane !== undefined) return lane.onRack ? 'rack' : lane.vessel;
  const { vessel, lanes } = kitchen.oven.context;
  return vessel === 'pot' && (lanes ?? []).length > 1 ? 'pots' : vessel;
}
