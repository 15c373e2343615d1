import type { Layer } from './layer.ts';
import type { Layers } from './layers.ts';

/** Sums of the same points in another order differ by less. */
export const SAME = 1e-9;

/** By step and slot from its `lo`: the least cost from there to ready, or from the start to there. */
export type Rows = readonly Float64Array[];

/** Cost of going from a step's slot to the next one's, the touches inside included. */
export function arcCost(layer: Layer, nextLo: number, from: number, to: number): number {
  const { link, near, farSides, farBefore, lo } = layer;
  const d = to - from - link.hands;
  const { min, max, cost } = link.wait;
  if (d < min || d > max || to > layer.until[from - lo]!) return Infinity;
  const wait = cost[d - min]!;
  if (d < near) return wait + layer.nearCost(from, to);
  return wait + (farSides ? farSides[from - lo]! : 0) + (farBefore ? farBefore[to - nextLo]! : 0);
}

/** Shortest and longest wait from a slot that reaches the next step's slots. */
function waitRange(
  layer: Layer,
  at: number,
  nextLo: number,
  nextHi: number,
): readonly [number, number] {
  const after = at + layer.link.hands;
  const { min, max } = layer.link.wait;
  const until = Math.min(nextHi, layer.until[at - layer.lo]!);
  return [Math.max(min, nextLo - after), Math.min(max, until - after)];
}

/** Counts the search's inner steps. */
export interface Effort {
  steps: number;
}

/**
 * The least cost from each slot of each step to ready, the step's own touch included; the last row is
 * of ready itself. Exact: every plan on the grid is one path, its costs add along it.
 */
export function backward({ chain, layers, ends }: Layers, effort: Effort): Rows {
  const { finish, start } = chain;
  const rows: Float64Array[] = [];
  rows[layers.length] = Float64Array.from(
    { length: ends[1] - ends[0] + 1 },
    (_, i) => finish * (ends[0] + i - (start ?? 0)),
  );
  for (let i = layers.length - 1; i >= 0; i -= 1) {
    const layer = layers[i]!;
    const { lo, hi, link, near, farSides, farBefore, node } = layer;
    const [nextLo, nextHi] = i + 1 < layers.length ? [layers[i + 1]!.lo, layers[i + 1]!.hi] : ends;
    const next = rows[i + 1]!;
    const far = farBefore ? next.map((cost, u) => cost + farBefore[u]!) : next;
    const { min, cost } = link.wait;
    const row = new Float64Array(hi - lo + 1).fill(Infinity);
    for (let t = lo; t <= hi; t += 1) {
      const own = node[t - lo]!;
      if (own === Infinity) continue;
      const [first, last] = waitRange(layer, t, nextLo, nextHi);
      effort.steps += Math.max(0, last - first + 1);
      const base = t + link.hands - nextLo;
      let best = Infinity;
      let d = first;
      for (; d <= last && d < near; d += 1) {
        const rest = cost[d - min]! + next[base + d]!;
        if (rest < best) best = Math.min(best, rest + layer.nearCost(t, t + link.hands + d));
      }
      let farBest = Infinity;
      for (; d <= last; d += 1) {
        const all = cost[d - min]! + far[base + d]!;
        if (all < farBest) farBest = all;
      }
      if (farSides) farBest += farSides[t - lo]!;
      row[t - lo] = own + Math.min(best, farBest);
    }
    rows[i] = row;
  }
  return rows;
}

/** The least cost from the start to each slot of each step, without the step's own touch. */
export function forward({ layers, ends }: Layers, effort: Effort): Rows {
  const rows: Float64Array[] = [new Float64Array(layers[0]!.hi - layers[0]!.lo + 1)];
  layers.forEach((layer, i) => {
    const { lo, hi, link, near, farSides, farBefore, node } = layer;
    const [nextLo, nextHi] = i + 1 < layers.length ? [layers[i + 1]!.lo, layers[i + 1]!.hi] : ends;
    const here = rows[i]!;
    const close = new Float64Array(nextHi - nextLo + 1).fill(Infinity);
    const far = close.slice();
    const { min, cost } = link.wait;
    for (let t = lo; t <= hi; t += 1) {
      const own = here[t - lo]! + node[t - lo]!;
      if (own === Infinity) continue;
      const [first, last] = waitRange(layer, t, nextLo, nextHi);
      effort.steps += Math.max(0, last - first + 1);
      const base = t + link.hands - nextLo;
      let d = first;
      for (; d <= last && d < near; d += 1) {
        const rest = own + cost[d - min]!;
        if (rest >= close[base + d]!) continue;
        const all = rest + layer.nearCost(t, t + link.hands + d);
        if (all < close[base + d]!) close[base + d] = all;
      }
      const withSides = own + (farSides ? farSides[t - lo]! : 0);
      if (withSides === Infinity) continue;
      for (; d <= last; d += 1) {
        const all = withSides + cost[d - min]!;
        if (all < far[base + d]!) far[base + d] = all;
      }
    }
    rows.push(close.map((cost, u) => Math.min(cost, far[u]! + (farBefore ? farBefore[u]! : 0))));
  });
  return rows;
}
