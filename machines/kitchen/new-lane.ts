import type { LaneVessel } from '../../src/core/records/position.ts';
import type { LaneStage } from '../../src/core/records/stage.ts';
import type { Instant } from '../../src/core/units.ts';
import { onlyDone } from '../tasks.ts';
import type { Kitchen, LaneSnapshot, Machines } from './kitchen.ts';

/** What a load in this kind of vessel begins with: tins and a tray colour from the first minute on. */
const FIRST: Readonly<Record<LaneVessel, LaneStage>> = {
  pot: 'lidded',
  stone: 'steaming',
  tin: 'open',
  tray: 'open',
};

/** A lane as its load has just gone in. What was done in this firing is not asked again. */
export const newLane = (
  { oven }: Kitchen,
  machines: Machines,
  loaves: readonly string[],
  at: Instant,
  vessel: LaneVessel = oven.context.vessel,
): LaneSnapshot => {
  const { tasks } = oven.context;
  const stage = FIRST[vessel];
  return machines.lane.resolveState({
    value: stage,
    context: {
      marks: {},
      entered: { [stage]: at },
      byDue: false,
      answers: {},
      tasks: onlyDone(tasks),
      vessel,
      loaves,
    },
  });
};
