import type { Instant, Minutes } from '../../units.ts';
import { slotDown, slotsIn, slotUp } from './grid.ts';
import type { Batch, Step } from './types.ts';
import { feedLengths, shiftCosts, waitLengths, type Lengths } from './wait-cost.ts';

/** A touch, in slots counted from the board's origin. */
export interface ChainTouch {
  readonly name: string;
  readonly hands: number;
  /** Where it is fixed: its slot and its own instant. */
  readonly fixed: { readonly slot: number; readonly at: Instant } | null;
  readonly stay: { readonly at: Instant; readonly costPer5Min: number } | null;
}

export interface Side {
  /** Index among the chain's touches. */
  readonly touch: number;
  readonly at: number;
  readonly earlier: number;
  readonly later: number;
  readonly shift: Float64Array;
}

export interface Link {
  readonly name: string;
  readonly touch: number;
  readonly hands: number;
  readonly wait: Lengths;
  readonly sides: readonly Side[];
  /** The touch counted back from the next step, and what each lag costs. */
  readonly before: { readonly touch: number; readonly hands: number; readonly lag: Lengths } | null;
  readonly fridge: number;
  readonly bowls: number;
  readonly oven: boolean;
  /** Slots past the hands that the oven is held; null: it is not. */
  readonly ovenPast: number | null;
}

/** One batch in slots. */
export interface Chain {
  readonly name: string;
  readonly links: readonly Link[];
  readonly touches: readonly ChainTouch[];
  readonly start: number | null;
  /** First and last slot it may be ready at: one, where it is due. */
  readonly ready: readonly [number, number];
  /** Points for each slot to ready. */
  readonly finish: number;
}

const USUAL_HORIZON: Minutes = 7200;
/** Points for each hour to ready where nothing is due. Judgement. */
const USUAL_FINISH = 0.2;
const SLOTS_AN_HOUR = 12;

const amount = (value: number | undefined, what: string): number => {
  const used = value ?? 0;
  if (!(Number.isInteger(used) && used >= 0))
    throw new Error(`${what} must be a whole number, 0 or more, not ${value}.`);
  return used;
};

function linkOf(step: Step, what: string, add: (name: string, hands: Minutes) => number): Link {
  const touch = add(step.name, step.hands);
  const sides = (step.during ?? []).map((side) => {
    const of = `${what}, ${side.name}`;
    const at = slotsIn(side.at, `${of}: at`);
    const earlier = slotsIn(side.earlier, `${of}: earlier`);
    const later = slotsIn(side.later, `${of}: later`);
    const shift = shiftCosts(earlier, later, side.weight);
    return { touch: add(side.name, side.hands), at, earlier, later, shift };
  });
  const next = step.beforeNext;
  const before = next && {
    touch: add(next.name, next.hands),
    hands: slotsIn(next.hands, `${what}, ${next.name}: hands`),
    lag: waitLengths(next, `${what}, ${next.name}`),
  };
  return {
    name: step.name,
    touch,
    hands: slotsIn(step.hands, `${what}: hands`),
    wait:
      'choices' in step.wait ? feedLengths(step.wait.choices, what) : waitLengths(step.wait, what),
    sides,
    before: before ?? null,
    fridge: amount(step.uses?.fridge, `${what}: fridge`),
    bowls: amount(step.uses?.bowls, `${what}: bowls`),
    oven: step.uses?.oven === 1,
    ovenPast: step.ovenAfter === undefined ? null : slotsIn(step.ovenAfter, `${what}: ovenAfter`),
  };
}

/**
 * A batch in slots; lengths from a table.
 *
 * @throws Error for minutes that are not in fives, a touch's name used twice, a `fixed` or `stayPut`
 * that names no touch, a batch without steps or with neither `due` nor `startAt`
 */
export function chainOf(batch: Batch, origin: number): Chain {
  const { name, steps, due, startAt, fixed = {}, stayPut = {} } = batch;
  if (steps.length === 0) throw new Error(`${name}: a batch needs a step.`);
  if (due === null && startAt === undefined)
    throw new Error(`${name}: a batch needs an hour it is due, or one to start at.`);
  const touches: ChainTouch[] = [];
  const names = new Set<string>();
  const add = (touch: string, hands: Minutes): number => {
    if (names.has(touch)) throw new Error(`${name}: two touches are called ${touch}.`);
    names.add(touch);
    const at = fixed[touch];
    touches.push({
      name: touch,
      hands: slotsIn(hands, `${name}, ${touch}: hands`),
      fixed: at === undefined ? null : { slot: slotUp(at) - origin, at },
      stay: stayPut[touch] ?? null,
    });
    return touches.length - 1;
  };
  const links = steps.map((step) => linkOf(step, `${name}, ${step.name}`, add));
  for (const key of [...Object.keys(fixed), ...Object.keys(stayPut)])
    if (!names.has(key)) throw new Error(`${name}: no touch is called ${key}.`);
  const start = startAt === undefined ? null : slotUp(startAt) - origin;
  const horizon = slotsIn(batch.horizonMinutes ?? USUAL_HORIZON, `${name}: horizonMinutes`);
  return {
    name,
    links,
    touches,
    start,
    ready:
      due === null ? [start!, start! + horizon] : [slotDown(due) - origin, slotDown(due) - origin],
    finish: due === null ? (batch.finishCostPerHour ?? USUAL_FINISH) / SLOTS_AN_HOUR : 0,
  };
}
