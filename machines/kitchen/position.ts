import type {
  BakePlace,
  LanePlace,
  OvenPlace,
  Place,
  Position,
} from '../../src/core/records/position.ts';
import type { BakeSnapshot, Kitchen, LaneSnapshot, Machines, StartFact } from './kitchen.ts';
import { emptyKitchen } from './kitchen.ts';
import { bakeInput } from './pinned.ts';
import { stageOf, valueOf } from './stage-of.ts';

type Placed = Parameters<typeof stageOf>[0] & { readonly context: Omit<Place, 'stage'> };

const placeOf = (machine: Placed): Place => ({
  stage: stageOf(machine),
  marks: machine.context.marks,
  entered: machine.context.entered,
  byDue: machine.context.byDue,
  answers: machine.context.answers,
  tasks: machine.context.tasks,
});

const bakePlaceOf = (bake: BakeSnapshot, { starts }: Kitchen): BakePlace => ({
  ...placeOf(bake),
  start: bake.context.start,
  ...(bake.context.loaves.length === starts[bake.context.start]?.loaves.length
    ? {}
    : { loaves: bake.context.loaves }),
  touches: bake.context.touches,
  belief: bake.context.belief,
  ...(bake.context.doubt ? { doubt: bake.context.doubt } : {}),
  readings: bake.context.readings,
});

const ovenPlaceOf = ({ oven }: Kitchen): OvenPlace => {
  const { vessel, waiting, soon, out, lanes, holds, turns, madeReady } = oven.context;
  return {
    ...placeOf(oven),
    vessel,
    waiting,
    soon,
    out,
    ...(lanes === undefined ? {} : { lanes }),
    ...(holds === undefined ? {} : { holds }),
    ...(turns === undefined ? {} : { turns }),
    ...(madeReady === undefined ? {} : { madeReady }),
  };
};

const lanePlaceOf = (lane: LaneSnapshot): LanePlace => ({
  ...placeOf(lane),
  vessel: lane.context.vessel,
  loaves: lane.context.loaves,
  ...(lane.context.onRack ? { onRack: true } : {}),
});

/** Where the whole kitchen stands, as plain data. */
export const positionOf = (kitchen: Kitchen): Position => ({
  now: kitchen.now,
  bakes: Object.fromEntries(
    Object.entries(kitchen.bakes).map(([id, bake]) => [id, bakePlaceOf(bake, kitchen)]),
  ),
  oven: ovenPlaceOf(kitchen),
  lanes: Object.fromEntries(
    Object.entries(kitchen.lanes).map(([who, lane]) => [who, lanePlaceOf(lane)]),
  ),
  attention: {
    heard: kitchen.attention.context.heard,
    snoozed: kitchen.attention.context.snoozed,
  },
  timers: kitchen.timers,
  starter: kitchen.starter,
});

/**
 * A kitchen that stands at `position`, links not yet settled.
 * @throws where a stage is unknown to these machines or a start fact is missing.
 */
export const kitchenAt = (
  position: Position,
  starts: Readonly<Record<string, StartFact>>,
  machines: Machines,
): Kitchen => {
  const empty = emptyKitchen(machines);
  const bakes = Object.entries(position.bakes).map(([id, { stage, start, ...place }]) => {
    const pinned = starts[start];
    if (pinned === undefined) throw new Error(`The start ${start} of bake ${id} is missing.`);
    const context = { ...bakeInput(pinned), ...place };
    return [id, machines.bake.resolveState({ value: valueOf(stage), context })] as const;
  });
  const { stage, ...place } = position.oven;
  return {
    ...empty,
    now: position.now,
    bakes: Object.fromEntries(bakes),
    oven: machines.oven.resolveState({
      value: stage,
      context: { ...empty.oven.context, ...place },
    }),
    lanes: Object.fromEntries(
      Object.entries(position.lanes).map(([who, { stage: at, ...lane }]) => [
        who,
        machines.lane.resolveState({ value: at, context: lane }),
      ]),
    ),
    attention: machines.attention.resolveState({
      value: 'quiet',
      context: { ...empty.attention.context, ...position.attention },
    }),
    timers: position.timers,
    starter: position.starter,
    base: position,
    starts,
  };
};
