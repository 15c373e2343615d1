import { deadlineOf } from '../../../machines/kitchen/dues.ts';
import type { Kitchen, LaneSnapshot } from '../../../machines/kitchen/kitchen.ts';
import { stageOf } from '../../../machines/kitchen/stage-of.ts';
import type { Process } from '../../core/formula/formula.ts';
import type { Recipe } from '../../core/formula/recipe.ts';
import type { Equipment } from '../../core/kitchen/equipment.ts';
import type { Lane, LoadInput, LoadPlan, Standing, WaitingLoaf } from '../../core/oven/lanes.ts';
import { loadPlan } from '../../core/oven/load-plan.ts';
import type { Grade } from '../../core/oven/load-order.ts';
import type { Turn } from '../../core/records/position.ts';
import { MINUTE, type Grams, type Instant, type Minutes } from '../../core/units.ts';
import { heatedLanes, heldBy } from './next-load.ts';

/** From one pot that is loaded to the next, by the same hands. Judgement. */
const LOAD_MINUTES: Minutes = 3;

/** What is said of a loaf's turn, as the plan grades loaves: before all others, or after them. */
const GRADE: Readonly<Record<Turn, Grade>> = {
  flat: 'over',
  first: 'over',
  later: 'sluggish',
};

/** The recipe of a loaf, running or over: its oven may still be hot. */
const recipeOf = ({ starts }: Kitchen, loaf: string): Recipe | undefined =>
  Object.values(starts).findLast(({ loaves }) => loaves.includes(loaf))?.recipe;

const processOf = (kitchen: Kitchen, loaf: string): Process | undefined =>
  recipeOf(kitchen, loaf)?.process;

/** The loaves that wait for a pot, in the order they go in. */
export const potQueue = (kitchen: Kitchen): readonly string[] =>
  kitchen.oven.context.waiting.filter((loaf) => processOf(kitchen, loaf)?.vessel === 'pot');

const holdsIn = ({ oven }: Kitchen, equipment: Equipment): Readonly<Record<string, Grams>> =>
  (oven.context.lanes === undefined ? heldBy(equipment) : oven.context.holds) ?? {};

/** The pots of this firing as lanes: those that heat, and one that dropped out with a loaf still in it, or a tray. */
const lanesOf = (kitchen: Kitchen, equipment: Equipment): readonly Lane[] => {
  const said = kitchen.oven.context.lanes ?? heatedLanes(equipment);
  const sizes = holdsIn(kitchen, equipment);
  const full = Object.entries(kitchen.lanes).filter(([, { context }]) => context.loaves.length > 0);
  const dropped = full.flatMap(([id]) => (said.includes(id) ? [] : id));
  return [
    ...said.map((id): Lane => {
      const lane = kitchen.lanes[id];
      const hot = lane && stageOf(lane) === 'recover' ? deadlineOf(lane) : null;
      const holds = sizes[id] ?? null;
      return hot === null ? { id, holds } : { id, holds, freeAt: hot };
    }),
    ...dropped.map((id): Lane => ({ id, holds: null, droppedOut: true })),
  ];
};

/**
 * When a loaf that is in a pot has its calls. As they really were or stand: a lid that is overdue comes
 * off now at the soonest, and a crust that is looked at is out now at the soonest.
 */
const standingOf = (
  { lidded, open, cool }: Process,
  [pot, lane]: readonly [string, LaneSnapshot],
  now: Instant,
): readonly Standing[] => {
  const { entered, loaves } = lane.context;
  const stage = stageOf(lane);
  const deadline = deadlineOf(lane);
  if (lane.context.vessel === 'tray') {
    const loadAt = Math.min(entered['open'] ?? now, entered['judge'] ?? now);
    return loaves.map((loaf) => ({ pot, loaf, loadAt, lidAt: null, outAt: deadline ?? now, cool }));
  }
  const loadAt = entered['lidded'] ?? now;
  const called = entered['lift'] ?? loadAt + lidded * MINUTE;
  const again = (entered['open'] ?? 0) > (entered['judge'] ?? Infinity);
  const calls = (): { lidAt: Instant; outAt: Instant } => {
    if (stage === 'lidded') {
      const lidAt = deadline ?? called;
      return { lidAt, outAt: lidAt + open * MINUTE };
    }
    if (stage === 'lift') return { lidAt: called, outAt: Math.max(now, called) + open * MINUTE };
    const lidAt = again ? called : (entered['open'] ?? called);
    return { lidAt, outAt: deadline ?? now };
  };
  return loaves.map((loaf) => ({ pot, loaf, loadAt, ...calls(), cool }));
};

const hotAt = ({ oven }: Kitchen, now: Instant): Instant | undefined => {
  const stage = stageOf(oven);
  if (stage === 'off' || stage === 'turnOn') return undefined;
  return Math.max(now, deadlineOf(oven) ?? now);
};

/** A loaf that no pot has room for may go into any: it is told of as it is loaded. `room`: the largest. */
const waitingLoaf = (kitchen: Kitchen, id: string, n: number, room: Grams): WaitingLoaf => {
  const { oven } = kitchen;
  const { piece, process } = recipeOf(kitchen, id)!;
  const turn = oven.context.turns?.[id];
  const until = n === 0 && stageOf(oven) === 'standing' ? deadlineOf(oven) : null;
  return {
    id,
    grams: Math.min(piece, room),
    own: process,
    ...(turn === undefined ? {} : { grade: GRADE[turn] }),
    ...(process.retard === 0 ? { warm: true } : {}),
    ...(until === null ? {} : { standsOutUntil: until }),
  };
};

/** Where loaves rise in the room, and come to the oven from. */
const RISING: readonly string[] = ['proof.warm', 'proof.soon', 'proof.poke'];

/** Loaves of a warm proof that come for these pots: when they are likely ready, now where they are looked at. */
const comingLoaves = (kitchen: Kitchen, now: Instant, room: Grams): readonly WaitingLoaf[] =>
  Object.values(kitchen.bakes).flatMap((bake) => {
    const { loaves, recipe, marks } = bake.context;
    const { process, piece } = recipe;
    if (process.vessel !== 'pot' || !RISING.includes(stageOf(bake))) return [];
    const ready = marks['likely'] ?? marks['look'] ?? deadlineOf(bake) ?? now;
    const standsOutUntil = Math.max(now, ready);
    const grams = Math.min(piece, room);
    return loaves.map((id) => ({ id, grams, own: process, warm: true as const, standsOutUntil }));
  });

/**
 * What the loads of this kitchen's pots are planned from: as facts have it and, where nothing was
 * pressed, as the hour has it. Null where no pot bakes or waits to.
 */
export function ovenInput(
  kitchen: Kitchen,
  equipment: Equipment,
  at: Instant = kitchen.now,
): LoadInput | null {
  const now = Math.max(at, kitchen.now);
  const queue = potQueue(kitchen);
  const lanes = Object.entries(kitchen.lanes).filter(
    ([, { context }]) => context.vessel === 'pot' || context.vessel === 'tray',
  );
  const standing = lanes.flatMap((lane) => {
    const process = processOf(kitchen, lane[1].context.loaves[0] ?? '');
    return process ? standingOf(process, lane, now) : [];
  });
  const process = processOf(kitchen, queue[0] ?? standing[0]?.loaf ?? '');
  if (process === undefined) return null;
  const { preheat, lidded, open, recovery, cool } = process;
  const hot = hotAt(kitchen, now);
  const pots = lanesOf(kitchen, equipment);
  const room = Math.max(...pots.map((pot) => (pot.droppedOut ? 0 : (pot.holds ?? Infinity))));
  return {
    // What is to bake flat goes into no pot.
    loaves: [
      ...queue
        .map((loaf, n) => waitingLoaf(kitchen, loaf, n, room))
        .filter(({ id }) => kitchen.oven.context.turns?.[id] !== 'flat'),
      ...comingLoaves(kitchen, now, room),
    ],
    pots,
    minutes: { preheat, lidded, open, recovery, loadMinutes: LOAD_MINUTES, cool },
    now,
    standing,
    ...(hot === undefined ? {} : { hotAt: hot }),
  };
}

/** Pot by pot, what stands in it and what goes in next, and when; null where no pot is in use. */
export const ovenPlan = (
  kitchen: Kitchen,
  equipment: Equipment,
  now: Instant = kitchen.now,
): LoadPlan | null => {
  const input = ovenInput(kitchen, equipment, now);
  return input && loadPlan(input);
};
