import type { Board } from './board.ts';
import type { Budget } from './budget.ts';
import { clashTree, type Standing } from './clash-tree.ts';
import { oneByOne } from './one-by-one.ts';
import { onePlan, type OnePlan } from './one-plan.ts';

/**
 * All plans of a board of several batches, better and better: one by one at once, then exactly. The last standing is proven: the best one, or none.
 */
export function* jointPlans(board: Board, budget: Budget): Generator<Standing, void> {
  const { effort } = budget;
  if (board.chains.length === 0) return yield { best: [], bound: 0 };
  return yield* clashTree(board, oneByOne(board, effort), effort);
}

/** Whether there is a plan at all; null where the budget ran out before that was known. */
export function anyPlan(board: Board, budget: Budget): boolean | null {
  const { effort } = budget;
  const { chains, room } = board;
  for (const index of chains.keys())
    if (onePlan(board, index, { forbid: null, room }, effort) === null) return false;
  if (chains.length <= 1 || oneByOne(board, effort, true)) return true;
  let last: readonly OnePlan[] | null = null;
  for (const { best, bound } of clashTree(board, null, effort)) {
    last = best;
    if (best || bound === Infinity) break;
    if (budget.isSpent()) return null;
  }
  return last !== null;
}
