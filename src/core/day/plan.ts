import { boardOf, type Board } from './plan/board.ts';
import { budgetOf } from './plan/budget.ts';
import type { Standing } from './plan/clash-tree.ts';
import { jointPlans } from './plan/joint.ts';
import { costOf } from './plan/one-by-one.ts';
import { solve, type Solved } from './plan/one-plan.ts';
import { SAME, type Effort } from './plan/shortest.ts';
import { slacks } from './plan/slack.ts';
import { readyAt, tellTouches } from './plan/tell.ts';
import type { PlanInput, PlanOptions, PlanResult } from './plan/types.ts';
import { reserve } from './plan/uses.ts';

/** How long is looked unless it is said: two batches nearly always end long before. Judgement. */
const USUAL_MS = { two: 10_000, more: 2_000 } as const;

function tell(board: Board, { best, bound }: Standing, effort: Effort): PlanResult {
  if (best === null) return { fits: null, bound };
  // Each batch anew among the others: of equally good plans the one that begins latest.
  const plans = [...best];
  const among = (index: number): Solved =>
    solve(board, index, reserve(board, plans.toSpliced(index, 1)), effort)!;
  const solved = plans.map((_, index) => {
    const anew = among(index);
    plans[index] = anew.plan;
    return anew;
  });
  const cost = costOf(plans);
  const touches = plans.flatMap((plan, index) => {
    const slack = slacks(plan, plans.length > 1 ? among(index) : solved[index]!, effort);
    return tellTouches(board, plan, slack);
  });
  return {
    fits: true,
    cost,
    atMostFromBest: cost - bound > SAME ? cost - bound : 0,
    touches: touches.sort((a, b) => a.at - b.at),
    ready: plans.map((plan) => readyAt(board, plan)),
  };
}

/**
 * Lays the touches of one or more bakes on the clock, back from the hour they are due or on from a
 * start, in slots of five minutes. Hands keep out of `blocked`, bakes share one pair of hands, the oven,
 * the fridge's places and the bowls. The cost, in points, is what the waits lose for being off their
 * usual lengths, and touches for being at an hour one would rather not. One and two batches are exact;
 * of more the result says how far from the best it is at most. `fits: null`: not decided in `limitMs`
 * (10 s for two, 2 s for more). Weights and prices are judgement.
 *
 * @throws Error for minutes that are not in fives, names used twice, a batch with no hour at all
 * @example
 * plan({ planFrom: 0, blocked: [], ratherNot: [], kitchen: { fridgePlaces: 4, bowls: 1, pots: 1, temperatureC: 24 }, batches: [{ name: 'lane wheat', due: 6e6, steps: [{ name: 'mix', hands: 10, wait: { min: 30, typicalFrom: 60, typicalTo: 60, max: 90, weightShort: 1, weightLong: 1 } }] }] }).touches[0].at // → 1800000
 */
export function plan(input: PlanInput, options: PlanOptions = {}): PlanResult {
  const board = boardOf(input);
  const budget = budgetOf(options, input.batches.length > 2 ? USUAL_MS.more : USUAL_MS.two);
  let last: Standing = { best: null, bound: -Infinity };
  for (const standing of jointPlans(board, budget)) {
    last = standing;
    if (budget.isSpent()) break;
  }
  if (last.best === null && last.bound === Infinity)
    return { fits: false, changes: [], because: [] };
  return tell(board, last, budget.effort);
}
