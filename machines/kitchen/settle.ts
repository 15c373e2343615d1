import type { Vessel } from '../../src/core/formula/formula.ts';
import { inTurn } from '../../src/core/oven/in-turn.ts';
import type { Call } from '../attention/attention.ts';
import { leadOf } from '../tasks.ts';
import type { BakeSnapshot, Kitchen, LaneSnapshot, Machines, OvenSnapshot } from './kitchen.ts';
import { loavesIn } from './lanes.ts';
import { leftOnCalls } from './oven-left-on.ts';
import { byRoom, isWantedHot, rackOf } from './room.ts';
import { openTasks } from './open-tasks.ts';
import { samePlain } from './same-plain.ts';
import { metaOf, stageOf } from './stage-of.ts';
import { stepAttention, stepBake, stepLane, stepOven, type Stepped } from './step.ts';
import { starterCalls } from './starter.ts';
import { timerCalls } from './timers.ts';

/** Loaves whose bake stands at the oven and that are neither in it nor out, in the order they go in. */
export const waitingLoaves = (kitchen: Kitchen): readonly string[] => {
  const { out, turns } = kitchen.oven.context;
  const load = loavesIn(kitchen);
  const waiting = Object.values(kitchen.bakes)
    .filter((bake) => stageOf(bake) === 'oven.queued')
    .toSorted(
      (a, b) =>
        (a.context.entered['oven.queued'] ?? 0) - (b.context.entered['oven.queued'] ?? 0) ||
        (a.context.id < b.context.id ? -1 : 1),
    )
    .flatMap((bake) => bake.context.loaves)
    .filter((loaf) => !load.includes(loaf) && !out.includes(loaf));
  return byRoom(kitchen, inTurn(waiting, turns));
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
const machineCalls = (who: string, machine: BakeSnapshot | OvenSnapshot | LaneSnapshot): Call[] => {
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
  ...machineCalls('oven', kitchen.oven).filter(({ stage }) => stage !== 'turnOff'),
  ...leftOnCalls(kitchen),
  ...Object.entries(kitchen.lanes).flatMap(([who, lane]) => machineCalls(who, lane)),
  ...Object.entries(kitchen.bakes).flatMap(([who, bake]) => machineCalls(who, bake)),
  ...timerCalls(kitchen),
  ...starterCalls(kitchen),
];

/**
 * The oven is told who waits and what its lanes are at, where it does not know yet. What went in left
 * the queue by itself: the next may bake in something else, which is made ready once all is out.
 */
const tellOven = (kitchen: Kitchen, machines: Machines, byTime: boolean): Stepped => {
  const oven = kitchen.oven.context;
  const waiting = waitingLoaves(kitchen);
  const coming = soonBakes(kitchen);
  const soon = coming.length > 0;
  const first = vesselOf(kitchen, waiting);
  const rack = rackOf(kitchen, first, waiting[0]);
  const asks =
    soon !== oven.soon ||
    (!rack.full && first !== oven.vessel) ||
    !samePlain(waiting, oven.waiting);
  if (!asks && samePlain(rack, oven.rack)) return { kitchen, taken: false, says: [] };
  const vessel = asks ? first : oven.vessel;
  const freed = byTime && stageOf(kitchen.oven) === 'baking';
  const called = freed || coming.some((bake) => bake.context.byDue);
  const event = { type: 'sync', at: kitchen.now, waiting, vessel, soon, rack, called } as const;
  return stepOven(kitchen, machines, event);
};

/**
 * Links between machines are levels, told in a fixed order: the oven who waits, its lanes whether
 * they are wanted, the bakes who is out, attention who calls. So a rebuilt kitchen finds them again
 * by itself. `byTime`: no press led here.
 */
export const settle = (kitchen: Kitchen, machines: Machines, byTime = false): Stepped => {
  const at = kitchen.now;
  const says: Stepped['says'][number][] = [];
  let next = kitchen;
  const go = (stepped: Stepped) => {
    next = stepped.kitchen;
    says.push(...stepped.says);
  };
  go(tellOven(next, machines, byTime));
  for (const who of Object.keys(next.lanes)) {
    go(stepLane(next, machines, who, { type: 'sync', at, wanted: isWantedHot(next, who) }));
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
