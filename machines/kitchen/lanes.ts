import type { Vessel } from '../../src/core/formula/formula.ts';
import { ONE_LANE } from '../../src/core/records/lane.ts';
import type { Kitchen, LaneSnapshot } from './kitchen.ts';

/** Loaves that are in the oven now. */
export const loavesIn = ({ lanes }: Kitchen): readonly string[] =>
  Object.values(lanes).flatMap((lane) => lane.context.loaves);

/** Loaves that are in the oven or out of it, their bake not yet gone on. */
export const bakedLoaves = (kitchen: Kitchen): readonly string[] => [
  ...loavesIn(kitchen),
  ...kitchen.oven.context.out,
];

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
