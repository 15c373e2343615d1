import type { Chain, Link } from './chain.ts';
import { placeInside, sideReach } from './side-places.ts';

/** What one step costs, over the slots it may begin at (`lo`…`hi`). */
export interface Layer {
  readonly link: Link;
  readonly lo: number;
  readonly hi: number;
  /** By slot from `lo`: the main touch's cost; Infinity where it may not be. */
  readonly node: Float64Array;
  /** By slot from `lo`: the last slot at which the next step may begin, as what it holds allows. */
  readonly until: Int32Array;
  /** Waits shorter than this have touches inside that `near` places; longer ones cost `far…`. */
  readonly near: number;
  /** By slot from `lo`: side touches, where the wait is long enough for all their places. */
  readonly farSides: Float64Array | null;
  /** By slot of the next step from its `lo`: the touch before it. */
  readonly farBefore: Float64Array | null;
  /** Cost of the touches inside a wait shorter than `near`, from step slot to next slot. */
  nearCost(from: number, next: number): number;
}

/** Cheapest places by end: row e of slot t is the least cost of all sides over within e slots. */
function sideTable(
  { sides, hands }: Link,
  lo: number,
  hi: number,
  reach: number,
  chain: Chain,
  costs: readonly Float64Array[],
): Float64Array {
  const width = reach + 1;
  const table = new Float64Array((hi - lo + 1) * width);
  let before = new Float64Array(width);
  let row = new Float64Array(width);
  for (let t = lo; t <= hi; t += 1) {
    before.fill(0);
    for (const { touch, at, earlier, shift } of sides) {
      const h = chain.touches[touch]!.hands;
      const cost = costs[touch]!;
      row.fill(Infinity);
      for (let i = 0; i < shift.length; i += 1) {
        const place = at - earlier + i;
        if (place < 0) continue;
        const slot = t + hands + place;
        const points = before[place]! + (slot < cost.length ? cost[slot]! : Infinity) + shift[i]!;
        if (points < row[place + h]!) row[place + h] = points;
      }
      for (let e = 1; e < width; e += 1) if (row[e - 1]! < row[e]!) row[e] = row[e - 1]!;
      [before, row] = [row, before];
    }
    table.set(before, (t - lo) * width);
  }
  return table;
}

/** Cheapest touch before the next step: row k of slot u is the least cost of a lag up to min + k. */
function beforeTable(
  { lag, hands, touch }: NonNullable<Link['before']>,
  lo: number,
  hi: number,
  costs: readonly Float64Array[],
): Float64Array {
  const width = lag.max - lag.min + 1;
  const table = new Float64Array((hi - lo + 1) * width);
  const cost = costs[touch]!;
  for (let u = lo; u <= hi; u += 1) {
    let best = Infinity;
    for (let k = 0; k < width; k += 1) {
      const at = u - lag.min - k - hands;
      const points = at >= 0 ? lag.cost[k]! + cost[at]! : Infinity;
      if (points < best) best = points;
      table[(u - lo) * width + k] = best;
    }
  }
  return table;
}

const lastOfRows = (table: Float64Array, width: number): Float64Array =>
  Float64Array.from({ length: table.length / width }, (_, i) => table[i * width + width - 1]!);

/** The costs of a step's inside touches, over its own slots and those of the next step. */
export function layerOf(
  chain: Chain,
  link: Link,
  costs: readonly Float64Array[],
  own: readonly [number, number],
  next: readonly [number, number],
  held: Pick<Layer, 'node' | 'until'>,
): Layer {
  const { before, hands } = link;
  const [lo, hi] = own;
  const handsOf = (touch: number): number => chain.touches[touch]!.hands;
  const hasSides = link.sides.length > 0;
  const reach = hasSides ? sideReach(link, handsOf) : 0;
  const sides = hasSides ? sideTable(link, lo, hi, reach, chain, costs) : null;
  const lags = before ? before.lag.max - before.lag.min + 1 : 0;
  const lagTable = before ? beforeTable(before, next[0], next[1], costs) : null;
  const lagReach = before ? before.lag.max + before.hands : 0;
  const meets = hasSides && before !== null && before.hands > 0;

  const nearCost = (from: number, to: number): number => {
    const d = to - from - hands;
    if (meets)
      return placeInside(link, { costs, hands: handsOf }, from + hands, to)?.cost ?? Infinity;
    let cost = 0;
    if (sides) cost += sides[(from - lo) * (reach + 1) + Math.min(d, reach)]!;
    if (before) {
      const k = Math.min(lags - 1, d - before.hands - before.lag.min);
      cost += k < 0 ? Infinity : lagTable![(to - next[0]) * lags + k]!;
    }
    return cost;
  };
  return {
    link,
    lo,
    hi,
    ...held,
    near: meets ? reach + lagReach : Math.max(reach, lagReach),
    farSides: sides && lastOfRows(sides, reach + 1),
    farBefore: lagTable && lastOfRows(lagTable, lags),
    nearCost,
  };
}
