import { becauseOf } from './plan/because.ts';
import { boardOf, type Board } from './plan/board.ts';
import { budgetOf } from './plan/budget.ts';
import { changesFor } from './plan/changes.ts';
import type { Standing } from './plan/clash-tree.ts';
import { jointPlans } from './plan/joint.ts';
import { costOf } from './plan/one-by-one.ts';
import { solve, type OnePlan, type Solved } from './plan/one-plan.ts';
import { SAME, type Effort } from './plan/shortest.ts';
import { slacks } from './plan/slack.ts';
import { readyAt, tellTouches } from './plan/tell.ts';
import { together } from './plan/together.ts';
import type { PlanInput, PlanOptions, PlanResult } from './plan/types.ts';
import { reserve } from './plan/uses.ts';
import { whatIf } from './plan/what-if.ts';

/** How long is looked unless it is said: two batches nearly always end long before. Judgement. */
const USUAL_MS = { two: 10_000, more: 2_000 } as const;
/** And for what would do where nothing fits. Judgement. */
const WHY_MS = 5_000;

/** Each batch anew among the others: of equally good plans the one that begins latest. */
function settle(board: Board, best: readonly OnePlan[], effort: Effort): Solved[] {
  const plans = [...best];
  const among = (index: number): Solved =>
    solve(board, index, reserve(board, plans.toSpliced(index, 1)), effort)!;
  plans.forEach((_, index) => {
    plans[index] = among(index).plan;
  });
  return plans.map((plan, index) => ({ ...among(index), plan }));
}

function tell(board: Board, solved: readonly Solved[], bound: number, effort: Effort): PlanResult {
  const cost = costOf(solved.map(({ plan }) => plan));
  return {
    fits: true,
    cost,
    atMostFromBest: cost - bound > SAME ? cost - bound : 0,
    touches: solved
      .flatMap((one) => tellTouches(board, one.plan, slacks(one, effort)))
      .sort((a, b) => a.at - b.at),
    ready: solved.map(({ plan }) => readyAt(board, plan)),
  };
}

/** What alone would do where nothing fits, and what stands in the way. */
function whyNot(input: PlanInput, options: PlanOptions): PlanResult {
  if (options.why === false) return { fits: false, changes: [], because: [] };
  const budget = budgetOf(options, WHY_MS);
  const changes = changesFor(input, whatIf(budget), budget.effort);
  const because = becauseOf(input, whatIf(budgetOf(options, WHY_MS)));
  if (changes.length > 0) return { fits: false, changes, because };
  return {
    fits: false,
    changes,
    because,
    together: together(input, whatIf(budgetOf(options, WHY_MS))),
  };
}

/** The last plan, before it those that were known sooner where `isEach`. */
function* search(
  input: PlanInput,
  options: PlanOptions,
  isEach: boolean,
): Generator<PlanResult, void> {
  const board = boardOf(input);
  const many = board.chains.length;
  const budget = budgetOf(options, many > 2 ? USUAL_MS.more : USUAL_MS.two);
  const { effort } = budget;
  if (many === 1) {
    const one = solve(board, 0, { forbid: null, room: board.room }, effort);
    return yield one ? tell(board, [one], one.plan.cost, effort) : whyNot(input, options);
  }
  let shown = Infinity;
  let last: Standing = { best: null, bound: 0 };
  for (const standing of jointPlans(board, budget)) {
    last = standing;
    const { best, bound } = standing;
    if (budget.isSpent()) break;
    if (!isEach || best === null || costOf(best) >= shown) continue;
    shown = costOf(best);
    yield tell(board, settle(board, best, effort), bound, effort);
  }
  const { best, bound } = last;
  if (best) yield tell(board, settle(board, best, effort), bound, effort);
  else yield bound === Infinity ? whyNot(input, options) : { fits: null, bound };
}

/**
 * The plans of `plan`, each as soon as it is known and each cheaper than the one before or nearer to
 * proven: one by one at once, then better until the best is proven or `limitMs` is over. A worker shows
 * each as it comes, and may stop asking. Nothing is told of a question that has no plan yet.
 */
export const betterPlans = (
  input: PlanInput,
  options: PlanOptions = {},
): Generator<PlanResult, void> => search(input, options, true);

/**
 * Lays the touches of one or more bakes on the clock, back from the hour they are due or on from a
 * start, in slots of five minutes. Hands keep out of `blocked`, bakes share one pair of hands, the oven,
 * the fridge's places and the bowls. The cost, in points, is what the waits lose for being off their
 * usual lengths, and touches for being at an hour one would rather not. One and two batches are exact;
 * of more the result says how far from the best it is at most. `fits: null`: not decided in `limitMs`
 * (10 s for two, 2 s for more). `fits: false`: none is possible; then `changes` are those that each alone
 * would do, the gentlest first, and `because` what stands in the way. Weights and prices are judgement.
 *
 * @throws Error for minutes that are not in fives, names used twice, a batch with no hour at all
 * @example
 * plan({ planFrom: 0, blocked: [], ratherNot: [], kitchen: { fridgePlaces: 4, bowls: 1, pots: 1, temperatureC: 24 }, batches: [{ name: 'lane wheat', due: 6e6, steps: [{ name: 'mix', hands: 10, wait: { min: 30, typicalFrom: 60, typicalTo: 60, max: 90, weightShort: 1, weightLong: 1 } }] }] }).touches[0].at // → 1800000
 */
export function plan(input: PlanInput, options: PlanOptions = {}): PlanResult {
  let last: PlanResult = { fits: null, bound: 0 };
  for (const result of search(input, options, false)) last = result;
  return last;
}
