import type { Vessel } from '../../src/core/formula/formula.ts';
import type { Call } from '../attention/attention.ts';
import { leadOf } from '../tasks.ts';
import type { BakeSnapshot, Kitchen, Machines, OvenSnapshot } from './kitchen.ts';
import { openTasks } from './open-tasks.ts';
import { samePlain } from './same-plain.ts';
import { metaOf, stageOf } from './stage-of.ts';
import { stepAttention, stepBake, stepOven, type Stepped } from './step.ts';
import { starterCalls } from './starter.ts';
import { timerCalls } from './timers.ts';

/** Loaves whose bake stands at the oven and that are neither in it nor out, bakes in start order. */
export const waitingLoaves = (kitchen: Kitchen): readonly string[] => {
  const { load, out } = kitchen.oven.context;
  return Object.values(kitchen.bakes)
    .filter((bake) => stageOf(bake) === 'oven.queued')
    .toSorted(
      (a, b) =>
        (a.context.entered['oven.queued'] ?? 0) - (b.context.entered['oven.queued'] ?? 0) ||
        (a.context.id < b.context.id ? -1 : 1),
    )
    .flatMap((bake) => bake.context.loaves)
    .filter((loaf) => !load.includes(loaf) && !out.includes(loaf));
};

/** Bakes whose warm loaves come soon: the oven is wanted hot for them, the first in start order first. */
export const soonBakes = ({ bakes }: Kitchen): readonly BakeSnapshot[] =>
  Object.values(bakes).filter(
    (bake) =>
      stageOf(bake) === 'proof.soon' ||
      (stageOf(bake) === 'proof.poke' && 'proof.soon' in bake.context.entered),
  );

/** What the first of these loaves bakes in, else what comes soon; else what the oven was last ready for. */
export const vesselOf = (kitchen: Kitchen, waiting: readonly string[]): Vessel => {
  const { bakes, oven } = kitchen;
  const first = Object.values(bakes).find((bake) => bake.context.loaves.includes(waiting[0] ?? ''));
  const bake = first ?? soonBakes(kitchen)[0];
  return bake?.context.recipe.process.vessel ?? oven.context.vessel;
};

/** A machine's calls: of a stage that time led into, or of tasks that its wait carries. */
const machineCalls = (who: string, machine: BakeSnapshot | OvenSnapshot): Call[] => {
  const { call } = metaOf(machine);
  const tasks = openTasks(machine).flatMap(({ task, called, calls }): Call[] => {
    if (!calls || called === null) return [];
    const stage = leadOf(task);
    return [{ id: `${who}:${stage}:${called}`, who, stage, kind: 'look', since: called }];
  });
  if (call === undefined || !machine.context.byDue) return tasks;
  const stage = stageOf(machine);
  const since = machine.context.entered[stage] ?? 0;
  return [{ id: `${who}:${stage}:${since}`, who, stage, kind: call, since }, ...tasks];
};

/** The calls that stand: stages and tasks that time led into, and timers that are over, and the starter that waits for a feed. */
export const callsOf = (kitchen: Kitchen): readonly Call[] => [
  ...machineCalls('oven', kitchen.oven),
  ...Object.entries(kitchen.bakes).flatMap(([who, bake]) => machineCalls(who, bake)),
  ...timerCalls(kitchen),
  ...starterCalls(kitchen),
];

/**
 * Links between machines are levels, told in a fixed order: the oven who waits, the bakes who is
 * out, attention who calls. So a rebuilt kitchen finds them again by itself.
 */
export const settle = (kitchen: Kitchen, machines: Machines): Stepped => {
  const at = kitchen.now;
  const says: Stepped['says'][number][] = [];
  let next = kitchen;
  const go = (stepped: Stepped) => {
    next = stepped.kitchen;
    says.push(...stepped.says);
  };
  const waiting = waitingLoaves(next);
  const coming = soonBakes(next);
  const soon = coming.length > 0;
  const oven = next.oven.context;
  const vessel = vesselOf(next, waiting);
  // What went in left the queue by itself: the next of them may bake in something else.
  const otherNext = oven.load.length === 0 && vessel !== oven.vessel;
  if (soon !== oven.soon || otherNext || !samePlain(waiting, oven.waiting)) {
    const called = coming.some((bake) => bake.context.byDue);
    go(stepOven(next, machines, { type: 'sync', at, waiting, vessel, soon, called }));
  }
  const { out } = next.oven.context;
  if (out.length > 0) {
    for (const who of Object.keys(next.bakes).toSorted()) {
      go(stepBake(next, machines, who, { type: 'sync', at, out }));
    }
  }
  const calls = callsOf(next);
  if (!samePlain(calls, next.attention.context.calls)) {
    go(stepAttention(next, machines, { type: 'sync', at, calls }));
  }
  return { kitchen: next, taken: next !== kitchen, says };
};
