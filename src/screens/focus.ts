import type { BakeSnapshot, Kitchen, OvenSnapshot } from '../../machines/kitchen/kitchen.ts';
import { openTasks } from '../../machines/kitchen/open-tasks.ts';
import { soonBakes } from '../../machines/kitchen/settle.ts';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import { benches, leftBake, leftBy } from './oven-left.ts';

/** The machine whose act a bake's bench shows: the oven while it has the loaves, else the bake. */
export interface Focus {
  readonly who: string;
  readonly machine: BakeSnapshot | OvenSnapshot;
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

/** Null when no such bake runs, unless it is over and left the oven hot: then the oven's. */
export const focusOn = (kitchen: Kitchen, id: string): Focus | null => {
  const bake = kitchen.bakes[id];
  if (bake === undefined) {
    const left = leftBake(kitchen);
    return left?.context.id === id ? { who: 'oven', machine: kitchen.oven, bake: left } : null;
  }
  return ovenFirst(kitchen, stageOf(bake))
    ? { who: 'oven', machine: kitchen.oven, bake }
    : { who: id, machine: bake, bake };
};

/** The bake a machine's call belongs to: its own, or the one the oven is busy with or was left by. */
export const bakeOf = (kitchen: Kitchen, who: string): string | null => {
  if (who !== 'oven') return benches(kitchen).includes(who) ? who : null;
  const { load, waiting } = kitchen.oven.context;
  const loaf = load[0] ?? waiting[0];
  const queued = [
    ...Object.values(kitchen.bakes).filter((b) => stageOf(b) === 'oven.queued'),
    ...soonBakes(kitchen),
  ];
  return (
    queued.find((b) => b.context.loaves.includes(loaf ?? ''))?.context.id ??
    queued[0]?.context.id ??
    leftBy(kitchen)?.bake ??
    Object.keys(kitchen.bakes).find((id) => focusOn(kitchen, id)?.who === 'oven') ??
    Object.keys(kitchen.bakes)[0] ??
    null
  );
};
