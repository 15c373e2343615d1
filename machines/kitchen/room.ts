import type { Vessel } from '../../src/core/formula/formula.ts';
import type { Grams } from '../../src/core/units.ts';
import { TRAY_LANE } from '../../src/core/records/lane.ts';
import type { Rack } from '../oven/oven-setup.ts';
import type { Kitchen } from './kitchen.ts';
import { freeLanes, loavesIn } from './lanes.ts';
import { stageOf } from './stage-of.ts';

/** More than any pot holds, g: of one whose size nobody said. */
const ANY: Grams = 1e6;

/**
 * The pots of this firing that a loaf has room in: where none has, all of them, for then it is told, and
 * the hands decide. Null where no size is known, and of a loaf that bakes in no pot.
 */
const roomFor = ({ oven, starts }: Kitchen, loaf: string): readonly string[] | null => {
  const { lanes = [], holds } = oven.context;
  const recipe = Object.values(starts).findLast(({ loaves }) => loaves.includes(loaf))?.recipe;
  if (holds === undefined || recipe?.process.vessel !== 'pot') return null;
  const large = lanes.filter((lane) => (holds[lane] ?? ANY) >= recipe.piece);
  return large.length > 0 ? large : lanes;
};

/**
 * The lanes a loaf could go into now: hot, empty, and large enough where one of the pots is. The smallest
 * first, so that the large ones stay free for those that need them; equal ones as they were told.
 */
export function lanesFor(kitchen: Kitchen, loaf: string, vessel: Vessel): readonly string[] {
  const { holds = {} } = kitchen.oven.context;
  const room = vessel === 'pot' ? roomFor(kitchen, loaf) : null;
  return freeLanes(kitchen, vessel)
    .filter((lane) => room?.includes(lane) ?? true)
    .toSorted((a, b) => (room ? (holds[a] ?? ANY) - (holds[b] ?? ANY) : 0));
}

/** What the oven is told of its lanes; `first` waits first, of a load in such a vessel. */
export const rackOf = (kitchen: Kitchen, vessel: Vessel, first: string | undefined): Rack => ({
  full: loavesIn(kitchen).length > 0,
  free: lanesFor(kitchen, first ?? '', vessel).length > 0,
  reheats: Object.values(kitchen.lanes).some((lane) => stageOf(lane) === 'recover'),
});

/**
 * Whether an emptied pot is to be hot again: loaves come that it has room for, and it was not taken out
 * of the round. A tray is not.
 */
export const isWantedHot = (kitchen: Kitchen, who: string): boolean => {
  const { waiting, soon, lanes, vessel } = kitchen.oven.context;
  const dropped = lanes !== undefined && vessel === 'pot' && !lanes.includes(who);
  if (dropped || who === TRAY_LANE) return false;
  const wants = (loaf: string): boolean =>
    vessel !== 'pot' || (roomFor(kitchen, loaf)?.includes(who) ?? true);
  return soon || waiting.some(wants);
};

/**
 * Loaves in the order they go in, one that no free pot has room for behind the first that one has: it
 * waits for a larger pot. What was to go in first stays so while there is a pot for it.
 *
 * @param loaves in their turn
 */
export function byRoom(kitchen: Kitchen, loaves: readonly string[]): readonly string[] {
  const { waiting } = kitchen.oven.context;
  if (roomFor(kitchen, loaves[0] ?? '') === null) return loaves;
  const first = [waiting[0] ?? '', ...loaves].find(
    (loaf) =>
      loaves.includes(loaf) &&
      roomFor(kitchen, loaf) !== null &&
      lanesFor(kitchen, loaf, 'pot').length > 0,
  );
  return first === undefined ? loaves : [first, ...loaves.filter((loaf) => loaf !== first)];
}
