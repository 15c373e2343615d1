import type { Board, Store } from './board.ts';
import type { Chain, Link } from './chain.ts';
import { layerOf, type Layer } from './layer.ts';

/**
 * What one batch has to keep to besides its own steps. `forbid` by slot: 1 where somebody else's hands
 * are fixed, 2 where hands may not be at all.
 */
export interface Bounds {
  readonly forbid: Uint8Array | null;
  readonly room: Readonly<Record<Store, Int32Array>>;
}

/** First and last slot of each step, and of ready, that its waits allow; null where none is left. */
function windows(chain: Chain): readonly (readonly [number, number])[] | null {
  const { links, start, ready } = chain;
  const n = links.length;
  const lo = new Array<number>(n + 1).fill(0);
  const hi = new Array<number>(n + 1).fill(ready[1]);
  if (start !== null) [lo[0], hi[0]] = [start, start];
  lo[n] = ready[0];
  links.forEach((link, i) => {
    lo[i] = Math.max(lo[i]!, 0);
    lo[i + 1] = Math.max(lo[i + 1]!, lo[i]! + link.hands + link.wait.min);
    hi[i + 1] = Math.min(hi[i + 1]!, hi[i]! + link.hands + link.wait.max);
  });
  for (let i = n - 1; i >= 0; i -= 1) {
    const { hands, wait } = links[i]!;
    hi[i] = Math.min(hi[i]!, hi[i + 1]! - hands - wait.min);
    lo[i] = Math.max(lo[i]!, lo[i + 1]! - hands - wait.max);
  }
  const spans = lo.map((from, i) => [from, hi[i]!] as const);
  return spans.every(([from, to]) => from <= to) ? spans : null;
}

/** Costs of a chain's touches with what is forbidden besides. */
function costsWith(chain: Chain, base: readonly Float64Array[], forbid: Uint8Array | null) {
  if (forbid === null) return base;
  const slots: number[] = [];
  for (let t = 0; t < forbid.length; t += 1) if (forbid[t]! > 0) slots.push(t);
  return base.map((cost, i) => {
    const { hands, fixed } = chain.touches[i]!;
    if (hands === 0) return cost;
    const bounded = cost.slice();
    for (const t of slots) {
      if (fixed && forbid[t] === 1) continue;
      bounded.fill(Infinity, Math.max(0, t - hands + 1), t + 1);
    }
    return bounded;
  });
}

/** From each slot on, the first with less room than `amount`. */
function firstWithout(room: Int32Array, amount: number): Int32Array {
  const next = new Int32Array(room.length + 1);
  next[room.length] = room.length;
  for (let t = room.length - 1; t >= 0; t -= 1) next[t] = room[t]! < amount ? t : next[t + 1]!;
  return next;
}

/** By slot from `lo`: the touch's own cost, and until when what the step holds is there. */
function heldFrom(
  link: Link,
  [lo, hi]: readonly [number, number],
  cost: Float64Array,
  full: (store: Store, amount: number) => Int32Array,
): Pick<Layer, 'node' | 'until'> {
  const node = cost.slice(lo, hi + 1);
  const until = new Int32Array(hi - lo + 1).fill(0x7fffffff);
  const hold = (store: Store, amount: number): void => {
    const next = full(store, amount);
    for (let t = lo; t <= hi; t += 1) until[t - lo] = Math.min(until[t - lo]!, next[t]!);
  };
  if (link.fridge > 0) hold('fridge', link.fridge);
  if (link.bowls > 0) hold('bowls', link.bowls);
  if (link.oven) hold('oven', 1);
  if (link.ovenPast !== null) {
    const next = full('oven', 1);
    for (let t = lo; t <= hi; t += 1)
      if (t + link.hands + link.ovenPast > next[t]!) node[t - lo] = Infinity;
  }
  return { node, until };
}

/** One batch ready to be searched. */
export interface Layers {
  readonly chain: Chain;
  readonly layers: readonly Layer[];
  readonly costs: readonly Float64Array[];
  /** Slots it may be ready at. */
  readonly ends: readonly [number, number];
}

/** Lays one batch of a board out for the search; null where its waits alone leave it no time. */
export function layersOf(board: Board, index: number, bounds: Bounds): Layers | null {
  const chain = board.chains[index]!;
  const spans = windows(chain);
  if (spans === null) return null;
  const costs = costsWith(chain, board.costs[index]!, bounds.forbid);
  const known = new Map<string, Int32Array>();
  const full = (store: Store, amount: number): Int32Array => {
    const key = `${store}${amount}`;
    const next = known.get(key) ?? firstWithout(bounds.room[store], amount);
    known.set(key, next);
    return next;
  };
  const layers = chain.links.map((link, i) => {
    const held = heldFrom(link, spans[i]!, costs[link.touch]!, full);
    return layerOf(chain, link, costs, spans[i]!, spans[i + 1]!, held);
  });
  return { chain, layers, costs, ends: spans.at(-1)! };
}
