import { chainOf, type Chain, type ChainTouch } from './chain.ts';
import { SLOT, slotDown, slotUp } from './grid.ts';
import type { PlanInput, Span } from './types.ts';

/** What a kitchen has so much of. */
export const STORES = ['fridge', 'bowls', 'oven'] as const;
export type Store = (typeof STORES)[number];

/** A plan's question laid on slots: `origin` is the slot of the epoch that is slot 0 here. */
export interface Board {
  readonly origin: number;
  readonly size: number;
  readonly chains: readonly Chain[];
  /** By chain and touch: what it costs to begin there; Infinity where it may not. */
  readonly costs: readonly (readonly Float64Array[])[];
  readonly room: Readonly<Record<Store, Int32Array>>;
}

/** Slots a span touches, outward, cut to the board; null where it touches none. */
function slotsOf(span: Span, origin: number, size: number): readonly [number, number] | null {
  if (span.to < span.from)
    throw new Error(`A span ends before it begins: ${span.name ?? 'unnamed'}.`);
  const from = Math.max(0, slotDown(span.from) - origin);
  const to = Math.min(size, slotUp(span.to) - origin);
  return span.to > span.from && from < to ? [from, to] : null;
}

interface Ground {
  readonly size: number;
  readonly first: number;
  /** Blocked slots before each slot. */
  readonly closed: Int32Array;
  readonly ratherNot: readonly {
    readonly slots: readonly [number, number];
    readonly cost: number;
  }[];
}

function touchCosts(
  { hands, fixed, stay }: ChainTouch,
  ground: Ground,
  origin: number,
): Float64Array {
  const { size, first, closed } = ground;
  const cost = new Float64Array(size + 1);
  if (hands > 0) {
    for (const { slots, cost: points } of ground.ratherNot) {
      const from = Math.max(0, slots[0] - hands + 1);
      for (let t = from; t < slots[1]; t += 1) cost[t]! += points;
    }
  }
  if (stay)
    for (let t = 0; t <= size; t += 1)
      cost[t]! += (stay.costPer5Min * Math.abs((origin + t) * SLOT - stay.at)) / SLOT;
  if (fixed) {
    const its = cost[fixed.slot] ?? Infinity;
    cost.fill(Infinity);
    if (fixed.slot >= 0 && fixed.slot <= size) cost[fixed.slot] = its;
    return cost;
  }
  cost.fill(Infinity, 0, Math.min(first, size + 1));
  if (hands > 0)
    for (let t = 0; t <= size; t += 1)
      if (closed[Math.min(size, t + hands)]! > closed[t]!) cost[t] = Infinity;
  return cost;
}

/**
 * Lays a question on slots: the start of planning and of a bake round up, due down, spans outward.
 * Touches that are fixed ask neither for free hands nor for the start of planning.
 *
 * @throws Error what `chainOf` throws, a span that ends before it begins, two batches of one name
 */
export function boardOf(input: PlanInput): Board {
  const { batches, kitchen, blocked, ratherNot, ovenBusy = [], now } = input;
  const from = slotUp(input.planFrom);
  const fixed = batches.flatMap((one) => Object.values(one.fixed ?? {}).map(slotUp));
  const origin = Math.min(from, ...fixed);
  if (new Set(batches.map(({ name }) => name)).size < batches.length)
    throw new Error('Two batches have the same name.');
  const chains = batches.map((batch) => chainOf(batch, origin));
  const after = Math.max(
    0,
    ...chains.flatMap(({ links }) => links.map((link) => link.hands + (link.ovenPast ?? 0))),
  );
  const size = Math.max(0, ...chains.map(({ ready }) => ready[1])) + after + 1;

  const closed = new Uint8Array(size);
  for (const span of blocked) {
    const slots = slotsOf(span, origin, size);
    if (slots) closed.fill(1, ...slots);
  }
  if (now !== undefined) closed.fill(1, 0, Math.min(size, Math.max(0, slotUp(now) - origin)));
  const sums = new Int32Array(size + 1);
  for (let t = 0; t < size; t += 1) sums[t + 1] = sums[t]! + closed[t]!;
  const priced = ratherNot.flatMap((span) => {
    const slots = slotsOf(span, origin, size);
    return slots ? [{ slots, cost: span.cost }] : [];
  });
  const ground: Ground = { size, first: from - origin, closed: sums, ratherNot: priced };

  const room = {
    fridge: new Int32Array(size).fill(kitchen.fridgePlaces),
    bowls: new Int32Array(size).fill(kitchen.bowls),
    oven: new Int32Array(size).fill(1),
  };
  for (const span of ovenBusy) {
    const slots = slotsOf(span, origin, size);
    if (slots) room.oven.fill(0, ...slots);
  }
  const costs = chains.map(({ touches }) =>
    touches.map((touch) => touchCosts(touch, ground, origin)),
  );
  return { origin, size, chains, costs, room };
}
