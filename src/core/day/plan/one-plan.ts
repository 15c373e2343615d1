import type { Board } from './board.ts';
import type { Chain } from './chain.ts';
import { layersOf, type Bounds, type Layers } from './layers.ts';
import { arcCost, backward, SAME, type Effort, type Rows } from './shortest.ts';
import { placeInside } from './side-places.ts';

/** The best plan of one batch. */
export interface OnePlan {
  readonly chain: Chain;
  readonly cost: number;
  /** By touch its slot. */
  readonly slots: Int32Array;
  /** Slot of each step's touch, and of ready. */
  readonly steps: readonly number[];
}

/** The same with what it was read from. */
export interface Solved {
  readonly plan: OnePlan;
  readonly layers: Layers;
  readonly rows: Rows;
}

/** Follows the rows from the latest best first slot. */
function follow(layers: Layers, rows: Rows): OnePlan | null {
  const first = rows[0]!;
  const cost = first.reduce((least, one) => Math.min(least, one), Infinity);
  if (cost === Infinity) return null;
  const steps: number[] = [];
  let at = layers.layers[0]!.lo + first.findLastIndex((one) => one <= cost + SAME);
  layers.layers.forEach((layer, i) => {
    steps.push(at);
    const next = layers.layers[i + 1];
    const nextLo = next ? next.lo : layers.ends[0];
    let best = Infinity;
    let to = at;
    rows[i + 1]!.forEach((rest, u) => {
      if (rest >= best) return;
      const all = rest + arcCost(layer, nextLo, at, nextLo + u);
      if (all < best - SAME) [best, to] = [all, nextLo + u];
    });
    at = to;
  });
  steps.push(at);
  return { chain: layers.chain, cost, slots: placesOf(layers, steps), steps };
}

/** Slots of all touches where the main ones stand at `steps`. */
function placesOf({ chain, layers, costs }: Layers, steps: readonly number[]): Int32Array {
  const slots = new Int32Array(chain.touches.length);
  const hands = (touch: number): number => chain.touches[touch]!.hands;
  layers.forEach(({ link }, i) => {
    slots[link.touch] = steps[i]!;
    if (link.sides.length === 0 && link.before === null) return;
    const placed = placeInside(link, { costs, hands }, steps[i]! + link.hands, steps[i + 1]!);
    if (placed === null)
      throw new Error(`${chain.name}, ${link.name}: a path without its touches.`);
    for (const [touch, slot] of placed.slots) slots[touch] = slot;
  });
  return slots;
}

/** What laying a batch out takes besides the search, in its inner steps for each slot and touch. */
const LAYING = 4;

/** The best plan of one batch of a board, the others being in `bounds`; null where none is possible. */
export function solve(board: Board, index: number, bounds: Bounds, effort: Effort): Solved | null {
  effort.steps += LAYING * board.size * board.chains[index]!.touches.length;
  const layers = layersOf(board, index, bounds);
  if (layers === null) return null;
  const rows = backward(layers, effort);
  const plan = follow(layers, rows);
  return plan && { plan, layers, rows };
}

/** `solve` without what the plan was read from, which is large. */
export const onePlan = (...asked: Parameters<typeof solve>): OnePlan | null =>
  solve(...asked)?.plan ?? null;
