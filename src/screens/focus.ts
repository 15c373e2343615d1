import type { BakeSnapshot, Kitchen, OvenSnapshot } from '../../machines/kitchen/kitchen.ts';
import { loavesIn } from '../../machines/kitchen/lanes.ts';
import { openTasks } from '../../machines/kitchen/open-tasks.ts';
import { soonBakes } from '../../machines/kitchen/settle.ts';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import { isLane } from '../core/records/lane.ts';
import { firstOf, lanesIn, type Heat } from './heat-focus.ts';
import { benches, leftBake, leftBy } from './oven-left.ts';

/** The machine whose act a bake's bench shows: the oven or a lane of it while they have the loaves, else the bake. */
export interface Focus {
  readonly who: string;
  readonly machine: BakeSnapshot | Heat['machine'];
  readonly bake: BakeSnapshot;
}

/** The oven asks to be turned on, or a task of its wait has called. */
const wantsHands = (oven: OvenSnapshot): boolean =>
  stageOf(oven) === 'turnOn' || openTasks(oven).some(({ calls }) => calls);

/** An oven left on is shown before anything that only cools, one to be turned on before a wait. */
const ovenFirst = (kitchen: Kitchen, stage: string): boolean =>
  stage === 'oven.queued' ||
  (stage === 'proof.soon' && wantsHands(kitchen.oven)) ||
  (stage.startsWith('cool.') && stageOf(kitchen.oven) === 'turnOff');

/**
 * The act of the oven and of this bake's lanes that comes first. Where it has none, and nothing can go
 * in, it is the others' lane that is waited for; else the oven's own.
 */
const heatOf = (kitchen: Kitchen, bake: BakeSnapshot): Focus => {
  const oven = { who: 'oven', machine: kitchen.oven };
  const lanes = lanesIn(kitchen);
  const own = firstOf(
    [oven, ...lanes].filter(({ who }) => bakeOf(kitchen, who) === bake.context.id),
  );
  const heat = own ?? oven;
  const isBusy = heat.who === 'oven' && stageOf(kitchen.oven) === 'baking';
  return { ...((isBusy ? firstOf(lanes) : null) ?? heat), bake };
};

/** Null when no such bake runs, unless it is over and left the oven hot: then the oven's. */
export const focusOn = (kitchen: Kitchen, id: string): Focus | null => {
  const bake = kitchen.bakes[id];
  if (bake === undefined) {
    const left = leftBake(kitchen);
    return left?.context.id === id ? heatOf(kitchen, left) : null;
  }
  return ovenFirst(kitchen, stageOf(bake))
    ? heatOf(kitchen, bake)
    : { who: id, machine: bake, bake };
};

/** The bake that a loaf in the oven is of, if it runs, or was the one to leave the oven hot. */
const bakeOfLoaf = (kitchen: Kitchen, loaf: string | undefined): string | undefined =>
  Object.values(kitchen.bakes).find((b) => b.context.loaves.includes(loaf ?? ''))?.context.id;

/** The bake the oven itself is at: of the loaf that goes in next, else of what is in it. */
const bakeOfOven = (kitchen: Kitchen): string | null => {
  const loaf = kitchen.oven.context.waiting[0] ?? loavesIn(kitchen)[0];
  const queued = [
    ...Object.values(kitchen.bakes).filter((b) => stageOf(b) === 'oven.queued'),
    ...soonBakes(kitchen),
  ];
  return (
    queued.find((b) => b.context.loaves.includes(loaf ?? ''))?.context.id ??
    queued[0]?.context.id ??
    leftBy(kitchen)?.bake ??
    Object.keys(kitchen.bakes).find((id) => stageOf(kitchen.bakes[id]!).startsWith('cool.')) ??
    Object.keys(kitchen.bakes)[0] ??
    null
  );
};

/** The same act as that of the bake that the oven or the lane is busy with, whichever bench shows it. */
export const atItsBake = (kitchen: Kitchen, focus: Focus): Focus => {
  const { who } = focus;
  if (who !== 'oven' && !isLane(who)) return focus;
  return { ...focus, bake: kitchen.bakes[bakeOf(kitchen, who) ?? ''] ?? focus.bake };
};

/** The bake a machine's call belongs to: its own, or the one the oven or the lane is busy with. */
export const bakeOf = (kitchen: Kitchen, who: string): string | null => {
  if (who === 'oven') return bakeOfOven(kitchen);
  if (!isLane(who)) return benches(kitchen).includes(who) ? who : null;
  return bakeOfLoaf(kitchen, kitchen.lanes[who]?.context.loaves[0]) ?? bakeOfOven(kitchen);
};
