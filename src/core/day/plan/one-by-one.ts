import type { Board } from './board.ts';
import { onePlan, type OnePlan } from './one-plan.ts';
import { SAME, type Effort } from './shortest.ts';
import { reserve } from './uses.ts';

/** Up to so many batches every order is tried. */
const ALL_ORDERS = 4;

/** Orders to plan `count` batches in: all of a few, else each one first in turn. */
function* orders(count: number): Generator<readonly number[]> {
  const all = Array.from({ length: count }, (_, i) => i);
  if (count > ALL_ORDERS) {
    for (const first of all) yield [first, ...all.filter((one) => one !== first)];
    return;
  }
  const rest = function* (left: readonly number[]): Generator<readonly number[]> {
    if (left.length === 0) yield [];
    for (const one of left)
      for (const order of rest(left.filter((other) => other !== one))) yield [one, ...order];
  };
  yield* rest(all);
}

export const costOf = (plans: readonly OnePlan[]): number =>
  plans.reduce((sum, { cost }) => sum + cost, 0);

function inOrder(board: Board, order: readonly number[], effort: Effort): OnePlan[] | null {
  const plans: OnePlan[] = [];
  for (const index of order) {
    const plan = onePlan(board, index, reserve(board, plans), effort);
    if (plan === null) return null;
    plans.push(plan);
  }
  return board.chains.map((_, index) => plans[order.indexOf(index)]!);
}

/** Takes one batch out and plans it anew among the others, until nothing gets cheaper. */
export function settleAmong(board: Board, plans: readonly OnePlan[], effort: Effort): OnePlan[] {
  const settled = [...plans];
  for (let better = true; better;) {
    better = false;
    settled.forEach((plan, index) => {
      const others = settled.filter((_, other) => other !== index);
      const anew = onePlan(board, index, reserve(board, others), effort);
      if (anew === null) throw new Error(`${plan.chain.name}: a plan that does not fit.`);
      if (anew.cost < plan.cost - SAME) better = true;
      settled[index] = anew;
    });
  }
  return settled;
}

/**
 * A plan of several batches by planning them one after another, each among those before it, in every
 * order; the cheapest, then bettered one batch at a time. Null where no order leads to one, which
 * does not mean that there is none. `isFirst`: any plan will do.
 */
export function oneByOne(board: Board, effort: Effort, isFirst = false): OnePlan[] | null {
  let best: OnePlan[] | null = null;
  for (const order of orders(board.chains.length)) {
    const plans = inOrder(board, order, effort);
    if (plans === null) continue;
    if (isFirst) return plans;
    const settled = settleAmong(board, plans, effort);
    if (best === null || costOf(settled) < costOf(best) - SAME) best = settled;
  }
  return best;
}
