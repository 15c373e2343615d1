import type { ListName } from '../../src/core/records/stage.ts';
import type { AttentionEvent } from '../attention/attention.ts';
import type { BakeEvent } from '../bake/bake-setup.ts';
import type { SayEffect } from '../meta.ts';
import type { LaneEvent } from '../oven/lane-setup.ts';
import type { OvenEvent } from '../oven/oven-setup.ts';
import type { Kitchen, Machines } from './kitchen.ts';
import { pureStep, type Action } from './pure-step.ts';
import { metaOf, type Stateful } from './stage-of.ts';

/** An answer that was the last its list waited for. */
export interface LastAnswer {
  readonly list: ListName;
  readonly item: string;
  readonly value: string;
}

/** A stage's sentence that wants to be said, and whose it is. */
export interface Say {
  readonly who: string;
  readonly stage: string;
  /** What led here, where a list was left by its last answer. */
  readonly ended?: LastAnswer;
}

/** A kitchen on its way, with what was to be said since. */
export interface Stepped {
  readonly kitchen: Kitchen;
  readonly taken: boolean;
  readonly says: readonly Say[];
}

type AnyEvent = BakeEvent | OvenEvent | LaneEvent;

/** A list's answers lead nowhere but the last one, which leads out of it. */
const endedBy = (from: Stateful, event: AnyEvent): Pick<Say, 'ended'> => {
  const { list } = metaOf(from);
  if (event.type !== 'answer' || list === undefined) return {};
  const { item = '', value = '' } = event;
  return { ended: { list, item, value } };
};

const saysOf = (who: string, from: Stateful, event: AnyEvent, actions: readonly Action[]): Say[] =>
  actions
    .filter((action) => action.type === 'effect')
    .map((action) => ({
      who,
      stage: (action.params as SayEffect).stage,
      ...endedBy(from, event),
    }));

const refused = (kitchen: Kitchen): Stepped => ({ kitchen, taken: false, says: [] });

/** One event into one bake. A finished bake leaves the kitchen, the others keep their order. */
export const stepBake = (
  kitchen: Kitchen,
  machines: Machines,
  who: string,
  event: BakeEvent,
): Stepped => {
  const snapshot = Object.hasOwn(kitchen.bakes, who) ? kitchen.bakes[who] : undefined;
  if (!snapshot?.can(event)) return refused(kitchen);
  const [next, actions] = pureStep(machines.bake, snapshot, event);
  const { [who]: _, ...others } = kitchen.bakes;
  const bakes = next.status === 'done' ? others : { ...kitchen.bakes, [who]: next };
  return {
    kitchen: { ...kitchen, bakes },
    taken: true,
    says: saysOf(who, snapshot, event, actions),
  };
};

/** One event into the oven. */
export const stepOven = (kitchen: Kitchen, machines: Machines, event: OvenEvent): Stepped => {
  if (!kitchen.oven.can(event)) return refused(kitchen);
  const [oven, actions] = pureStep(machines.oven, kitchen.oven, event);
  return {
    kitchen: { ...kitchen, oven },
    taken: true,
    says: saysOf('oven', kitchen.oven, event, actions),
  };
};

/** One event into one lane. One that is hot and empty leaves the kitchen. */
export const stepLane = (
  kitchen: Kitchen,
  machines: Machines,
  who: string,
  event: LaneEvent,
): Stepped => {
  const snapshot = Object.hasOwn(kitchen.lanes, who) ? kitchen.lanes[who] : undefined;
  if (!snapshot?.can(event)) return refused(kitchen);
  const [next, actions] = pureStep(machines.lane, snapshot, event);
  const { [who]: _, ...others } = kitchen.lanes;
  const lanes = next.status === 'done' ? others : { ...kitchen.lanes, [who]: next };
  return {
    kitchen: { ...kitchen, lanes },
    taken: true,
    says: saysOf(who, snapshot, event, actions),
  };
};

/** One event into attention. */
export const stepAttention = (
  kitchen: Kitchen,
  machines: Machines,
  event: AttentionEvent,
): Stepped => {
  if (!kitchen.attention.can(event)) return refused(kitchen);
  const [attention] = pureStep(machines.attention, kitchen.attention, event);
  return { kitchen: { ...kitchen, attention }, taken: true, says: [] };
};
