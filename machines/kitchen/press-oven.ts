import type { Fact, OvenAct } from '../../src/core/records/fact.ts';
import { TRAY_LANE } from '../../src/core/records/lane.ts';
import type { LaneEvent } from '../oven/lane-setup.ts';
import type { OvenEvent } from '../oven/oven-setup.ts';
import type { Kitchen, Machines } from './kitchen.ts';
import { freeLanes } from './lanes.ts';
import { newLane } from './new-lane.ts';
import { mayTurn } from './may-turn.ts';
import { isWantedHot, lanesFor } from './room.ts';
import { vesselOf } from './settle.ts';
import { stageOf } from './stage-of.ts';
import { stepLane, stepOven, type Stepped } from './step.ts';

type Press = Extract<Fact, { kind: 'press' }>;

/** Whether another loaf that waits could go into another lane at once. Only a pot leaves room for more. */
const moreFit = (kitchen: Kitchen, lane: string, loaves: readonly string[]): boolean => {
  const { vessel, waiting, lanes } = kitchen.oven.context;
  const rest = waiting.filter((loaf) => !loaves.includes(loaf));
  if (rest.length === 0 || vessel !== 'pot' || vesselOf(kitchen, rest) !== vessel) return false;
  if (lane === TRAY_LANE && lanes === undefined) return false;
  return rest.some((loaf) => lanesFor(kitchen, loaf, vessel).some((free) => free !== lane));
};

/** Whether the tray is free: two loaves in it would not be done at once. */
export const isTrayFree = ({ lanes }: Kitchen): boolean => !Object.hasOwn(lanes, TRAY_LANE);

/** A pot that is told apart holds one loaf, and a load one kind of vessel: the one made ready. */
const fits = (kitchen: Kitchen, lane: string, loaves: readonly string[]): boolean => {
  const { vessel, lanes } = kitchen.oven.context;
  const one = lanes === undefined || vessel !== 'pot' || loaves.length === 1;
  return (
    one &&
    freeLanes(kitchen, vessel).includes(lane) &&
    loaves.every((loaf) => vesselOf(kitchen, [loaf]) === vessel)
  );
};

/** Into the tray goes the loaf that was told to bake flat, and no other. */
const fitsTray = (kitchen: Kitchen, lane: string, loaves: readonly string[]): boolean =>
  lane === TRAY_LANE &&
  isTrayFree(kitchen) &&
  loaves.length === 1 &&
  loaves[0] === kitchen.oven.context.waiting[0];

/** The oven takes the loaves out of its queue, and a lane of theirs begins. */
const load = (kitchen: Kitchen, machines: Machines, { at, lane, loaves = [] }: Press): Stepped => {
  const { vessel } = kitchen.oven.context;
  const flat = stageOf(kitchen.oven) === 'tray';
  const into = lane ?? (flat ? TRAY_LANE : lanesFor(kitchen, loaves[0] ?? '', vessel)[0]);
  const may = flat ? fitsTray : fits;
  if (into === undefined || !may(kitchen, into, loaves)) {
    return { kitchen, taken: false, says: [] };
  }
  const more = moreFit(kitchen, into, loaves);
  const stepped = stepOven(kitchen, machines, { type: 'loaded', at, loaves, more });
  if (!stepped.taken) return stepped;
  const filled = newLane(kitchen, machines, loaves, at, flat ? 'tray' : vessel);
  return {
    kitchen: { ...stepped.kitchen, lanes: { ...stepped.kitchen.lanes, [into]: filled } },
    taken: true,
    says: [{ who: into, stage: stageOf(filled) }, ...stepped.says],
  };
};

const ovenEvent = ({ at, act, item, value, lanes, holds }: Press): OvenEvent =>
  act === 'ovenOn'
    ? {
        type: act,
        at,
        ...(lanes === undefined ? {} : { lanes }),
        ...(holds === undefined ? {} : { holds }),
      }
    : {
        type: act as Exclude<OvenAct, 'loaded' | 'ovenOn' | 'lidOff' | 'steamOut'>,
        at,
        ...(item === undefined ? {} : { item }),
        ...(value === undefined ? {} : { value }),
      };

/** A loaf in a tin is in its tin already; a tray takes one loaf at a time. */
export const mayBakeFlat = (kitchen: Kitchen): boolean =>
  kitchen.oven.context.vessel !== 'tin' && isTrayFree(kitchen);

/** What the oven would take, and what stands about it forbids. */
const mayNot = (kitchen: Kitchen, { act, item = '', freely }: Press): boolean =>
  act === 'loafFirst' || act === 'loafLater'
    ? !freely && !mayTurn(kitchen, act, item)
    : act === 'pokeFlat' && !mayBakeFlat(kitchen);

/** A press on the oven itself. */
export const pressOven = (kitchen: Kitchen, machines: Machines, fact: Press): Stepped => {
  if (fact.act === 'loaded') return load(kitchen, machines, fact);
  if (mayNot(kitchen, fact)) return { kitchen, taken: false, says: [] };
  return stepOven(kitchen, machines, ovenEvent(fact));
};

const laneEvent = (kitchen: Kitchen, { who, at, act, item, value, was }: Press): LaneEvent => {
  if (act === 'unloaded') return { type: act, at, more: isWantedHot(kitchen, who) };
  if (act === 'lidOff' || act === 'steamOut')
    return { type: act, at, ...(was === undefined ? {} : { was }) };
  return {
    type: act as Exclude<OvenAct, 'loaded' | 'lidOff' | 'steamOut' | 'unloaded'>,
    at,
    ...(item === undefined ? {} : { item }),
    ...(value === undefined ? {} : { value }),
  };
};

/** A press on a lane; what it means for the oven is told to it. */
export const pressLane = (kitchen: Kitchen, machines: Machines, fact: Press): Stepped => {
  const stepped = stepLane(kitchen, machines, fact.who, laneEvent(kitchen, fact));
  const { at, act, item = '' } = fact;
  if (!stepped.taken || (act !== 'unloaded' && act !== 'taskDone')) return stepped;
  const told =
    act === 'unloaded'
      ? ({ type: 'cameOut', at, loaves: kitchen.lanes[fact.who]!.context.loaves } as const)
      : ({ type: 'taskKept', at, task: item } as const);
  return { ...stepped, kitchen: stepOven(stepped.kitchen, machines, told).kitchen };
};
