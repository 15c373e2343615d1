import type { Vessel } from '../../src/core/formula/formula.ts';
import type { Grams } from '../../src/core/units.ts';
import { TRAY_LANE } from '../../src/core/records/lane.ts';
import type { Rack } from '../oven/oven-setup.ts';
import type { Kitchen } from './kitchen.ts';
import { freeLanes, loavesIn } from './lanes.ts';
import { stageOf } from './stage-of.ts';

/** What is known of a loaf that its pot has to have room for. */
const recipeOf = ({ starts }: Kitchen, loaf: string) =>
  Object.values(starts).findLast(({ loaves }) => loaves.includes(loaf))?.recipe;

/**
 * The pots of this firing that a piece has room in: where none has, all of them, for then it is told, and
 * the hands decide. A pot whose size nobody said takes any piece.
 */
const roomy = ({ oven }: Kitchen, piece: Grams): readonly string[] => {
  const { lanes = [], holds = {} } = oven.context;
  const large = lanes.filter((lane) => (holds[lane] ?? Infinity) >= piece);
  return large.length > 0 ? large : lanes;
};

/**
 * The lanes a loaf could go into now: hot, empty, and large enough where one of the pots is. The smallest
 * first, so that the large ones stay free for those that need them; equal ones as they were told.
 */
export function lanesFor(kitchen: Kitchen, loaf: string, vessel: Vessel): readonly string[] {
  const free = freeLanes(kitchen, vessel);
  const { holds, lanes } = kitchen.oven.context;
  const piece = recipeOf(kitchen, loaf)?.piece;
  if (vessel !== 'pot' || holds === undefined || lanes === undefined || piece === undefined) {
    return free;
  }
  const large = roomy(kitchen, piece);
  const size = (lane: string): number => holds[lane] ?? Infinity;
  return free
    .filter((lane) => large.includes(lane))
    .toSorted((a, b) => (size(a) === size(b) ? 0 : size(a) - size(b)));
}

/** What the oven is told of its lanes; `first` waits first, of a load in such a vessel. */
export const rackOf = (kitchen: Kitchen, vessel: Vessel, first: string | undefined): Rack => ({
  full: loavesIn(kitchen).length > 0,
  free: lanesFor(kitchen, first ?? '', vessel).length > 0,
  reheats: Object.values(kitchen.lanes).some((lane) => stageOf(lane) === 'recover'),
});

/** Whether a loaf that waits may bake in a pot, hot or not; one that bakes in no pot is not asked. */
const mayUse = (kitchen: Kitchen, loaf: string, lane: string): boolean => {
  const recipe = recipeOf(kitchen, loaf);
  const asked = recipe?.process.vessel === 'pot' && kitchen.oven.context.holds !== undefined;
  return !asked || roomy(kitchen, recipe.piece).includes(lane);
};

/**
 * Whether an emptied pot is to be hot again: loaves come that it has room for, and it was not taken out
 * of the round. A tray is not.
 */
export const isWantedHot = (kitchen: Kitchen, who: string): boolean => {
  const { waiting, soon, lanes, vessel } = kitchen.oven.context;
  const dropped = lanes !== undefined && vessel === 'pot' && !lanes.includes(who);
  if (dropped || who === TRAY_LANE) return false;
  return soon || waiting.some((loaf) => vessel !== 'pot' || mayUse(kitchen, loaf, who));
};

const AT_DOOR: readonly string[] = ['poke', 'standing', 'before', 'score', 'load', 'tray'];

/**
 * Loaves in the order they go in, one that no free pot has room for behind the first that one has: it
 * waits for a larger pot. What is at the door stays there while it has its pot.
 *
 * @param loaves in their turn
 */
export function byRoom(kitchen: Kitchen, loaves: readonly string[]): readonly string[] {
  const { holds, waiting } = kitchen.oven.context;
  const vessel = (loaf: string): Vessel | undefined => recipeOf(kitchen, loaf)?.process.vessel;
  if (holds === undefined || vessel(loaves[0] ?? '') !== 'pot') return loaves;
  const fits = (loaf: string): boolean =>
    vessel(loaf) === 'pot' && lanesFor(kitchen, loaf, 'pot').length > 0;
  const there = AT_DOOR.includes(stageOf(kitchen.oven)) ? waiting[0] : undefined;
  const stays = there !== undefined && loaves.includes(there) && fits(there);
  const first = stays ? there : loaves.find(fits);
  return first === undefined ? loaves : [first, ...loaves.filter((loaf) => loaf !== first)];
}
