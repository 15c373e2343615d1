import type { Link, Side } from './chain.ts';

/** Slots from the end of a step's hands by which its last side touch is over at the latest. */
export const sideReach = (link: Link, hands: (touch: number) => number): number =>
  Math.max(0, ...link.sides.map((side) => side.at + side.later + hands(side.touch)));

/** What side touches may do between the end of a step's hands and the next step. */
interface Ask {
  readonly sides: readonly Side[];
  readonly hands: (touch: number) => number;
  readonly costs: readonly Float64Array[];
  /** End of the step's hands. */
  readonly anchor: number;
  /** Slots, from the anchor on, by whose end the last one is over. */
  readonly reach: number;
  /** Slots, from the anchor on, that they keep out of; from = to: none. */
  readonly gap: readonly [number, number];
  /** A touch held to one slot. */
  readonly pin?: { readonly touch: number; readonly slot: number } | undefined;
}

/** Cost of one side touch `place` slots from the anchor; Infinity where it may not be. */
function placeCost(ask: Ask, side: Side, place: number): number {
  const { costs, anchor, gap, pin } = ask;
  if (place < 0) return Infinity;
  if (pin?.touch === side.touch && pin.slot !== anchor + place) return Infinity;
  const end = place + ask.hands(side.touch);
  if (end > place && place < gap[1] && end > gap[0]) return Infinity;
  const points = costs[side.touch]![anchor + place] ?? Infinity;
  return points + side.shift[place - side.at + side.earlier]!;
}

/**
 * By side touch: least cost of it and all before it when they are over within so many slots of the
 * anchor. The last row is the whole; without side touches all is free.
 */
export function sideRows(ask: Ask): Float64Array[] {
  const { sides, reach, hands } = ask;
  const rows = [new Float64Array(reach + 1)];
  for (const side of sides) {
    const before = rows.at(-1)!;
    const row = new Float64Array(reach + 1).fill(Infinity);
    const h = hands(side.touch);
    for (let i = 0; i < side.shift.length; i += 1) {
      const place = side.at - side.earlier + i;
      if (place < 0 || place + h > reach) continue;
      const points = before[place]! + placeCost(ask, side, place);
      if (points < row[place + h]!) row[place + h] = points;
    }
    for (let end = 1; end <= reach; end += 1) row[end] = Math.min(row[end]!, row[end - 1]!);
    rows.push(row);
  }
  return rows;
}

/** Places of all side touches behind the last value of `sideRows`, as slots by touch; null: none are. */
export function sidePlaces(ask: Ask, rows: readonly Float64Array[]): Map<number, number> | null {
  const places = new Map<number, number>();
  let end = ask.reach;
  if (rows.at(-1)![end] === Infinity) return null;
  for (let j = ask.sides.length - 1; j >= 0; j -= 1) {
    const side = ask.sides[j]!;
    const h = ask.hands(side.touch);
    let best = Infinity;
    let at = 0;
    for (let i = 0; i < side.shift.length; i += 1) {
      const place = side.at - side.earlier + i;
      if (place < 0 || place + h > end) continue;
      const points = rows[j]![place]! + placeCost(ask, side, place);
      if (points < best) [best, at] = [points, place];
    }
    places.set(side.touch, ask.anchor + at);
    end = at;
  }
  return places;
}

/** Where the touches inside one wait go, and what that costs. */
export interface Placed {
  readonly cost: number;
  readonly slots: ReadonlyMap<number, number>;
}

/**
 * The cheapest places of all touches inside a wait from `anchor` (the end of the step's hands) to
 * `next`, exactly: side touches in their order, the one before the next step wherever it overlaps none
 * of them. Null where there are none.
 */
export function placeInside(
  link: Link,
  context: Pick<Ask, 'costs' | 'hands' | 'pin'>,
  anchor: number,
  next: number,
): Placed | null {
  const { sides, before } = link;
  const reach = next - anchor;
  const ask = (gap: readonly [number, number]): Ask => ({ ...context, sides, anchor, reach, gap });
  if (before === null) {
    const rows = sideRows(ask([0, 0]));
    const slots = sidePlaces(ask([0, 0]), rows);
    return slots && { cost: rows.at(-1)![reach]!, slots };
  }
  let best: Placed | null = null;
  const { lag, hands, touch } = before;
  for (let l = lag.min; l <= lag.max; l += 1) {
    const at = next - l - hands;
    if (at < anchor) break;
    if (context.pin?.touch === touch && context.pin.slot !== at) continue;
    const own = lag.cost[l - lag.min]! + (context.costs[touch]![at] ?? Infinity);
    if (own === Infinity || (best && own >= best.cost)) continue;
    const gap = hands > 0 ? ([at - anchor, at - anchor + hands] as const) : ([0, 0] as const);
    const rows = sideRows(ask(gap));
    const cost = own + rows.at(-1)![reach]!;
    if (cost === Infinity || (best && cost >= best.cost)) continue;
    const slots = sidePlaces(ask(gap), rows);
    if (slots) best = { cost, slots: new Map([...slots, [touch, at]]) };
  }
  return best;
}
