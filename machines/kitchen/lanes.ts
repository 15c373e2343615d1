import type { Vessel } from '../../src/core/formula/formula.ts';
import { ONE_LANE } from '../../src/core/records/lane.ts';
import type { LaneVessel } from '../../src/core/records/position.ts';
import type { LaneStage } from '../../src/core/records/stage.ts';
import type { Instant } from '../../src/core/units.ts';
import type { Kitchen, LaneSnapshot, Machines } from './kitchen.ts';
import { onlyDone } from '../tasks.ts';

/** Loaves that are in the oven now. */
export const loavesIn = ({ lanes }: Kitchen): readonly string[] =>
  Object.values(lanes).flatMap((lane) => lane.context.loaves);

/** Loaves that are in the oven or out of it, their bake not yet gone on. */
export const bakedLoaves = (kitchen: Kitchen): readonly string[] => [
  ...loavesIn(kitchen),
  ...kitchen.oven.context.out,
];

/** What a load in this kind of vessel begins with: tins and a tray colour from the first minute on. */
const FIRST: Readonly<Record<LaneVessel, LaneStage>> = {
  pot: 'lidded',
  stone: 'steaming',
  tin: 'open',
  tray: 'open',
};

/**
 * The lanes that could take a load in this kind of vessel now: hot, and empty. Tins and a stone fill
 * the oven, and so does a load of a log in which pots were not told apart; a tray stands beside pots.
 */
export const freeLanes = ({ oven, lanes }: Kitchen, vessel: Vessel): readonly string[] => {
  const said = oven.context.lanes;
  const taken = Object.values(lanes);
  if (said === undefined || vessel !== 'pot') return taken.length === 0 ? [ONE_LANE] : [];
  const fills = ({ context }: LaneSnapshot) =>
    context.vessel !== 'pot' && context.vessel !== 'tray';
  if (taken.some(fills)) return [];
  return said.filter((lane) => !Object.hasOwn(lanes, lane));
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
