import loadHighs from 'highs';
import { plan } from '../../../../src/core/day/plan.ts';
import { boardOf } from '../../../../src/core/day/plan/board.ts';
import { budgetOf } from '../../../../src/core/day/plan/budget.ts';
import { jointPlans } from '../../../../src/core/day/plan/joint.ts';
import { costOf } from '../../../../src/core/day/plan/one-by-one.ts';
import { onePlan } from '../../../../src/core/day/plan/one-plan.ts';
import type { PlanInput } from '../../../../src/core/day/plan/types.ts';
import { anyInstance } from './instances.ts';
import { milpOf } from './milp.ts';

/** Costs are equal to this: the solver's own tolerances add up to less. */
export const CLOSE = 5e-6;

/** A question answered twice; cost null: no plan. */
export interface Twice {
  readonly seed: number;
  readonly ours: number | null;
  readonly theirs: number | null;
  /** Milliseconds each took, the model's writing not counted. */
  readonly ms: { readonly ours: number; readonly theirs: number };
}

/** What the planner searches, without what it tells of slack, or of a question without a plan. */
function search(input: PlanInput): number | null {
  const board = boardOf(input);
  const budget = budgetOf({}, 60_000);
  if (board.chains.length === 1) {
    const bounds = { forbid: null, room: board.room };
    return onePlan(board, 0, bounds, budget.effort)?.cost ?? null;
  }
  let cost: number | null = null;
  for (const { best } of jointPlans(board, budget)) cost = best && costOf(best);
  return cost;
}

const timed = <T>(work: () => T): readonly [T, number] => {
  const began = performance.now();
  const result = work();
  return [result, performance.now() - began];
};

/** Answers seeded questions by the planner and by the solver HiGHS. */
export async function answerTwice(
  seeds: readonly number[],
  count: number,
  change: (input: PlanInput) => PlanInput = (input) => input,
): Promise<Twice[]> {
  const highs = await loadHighs();
  // The planner's code is warm, as it is in a kitchen after its first plan.
  for (const seed of seeds) search(anyInstance(seed, count));
  const options = { mip_rel_gap: 0, mip_abs_gap: 1e-7, output_flag: false };
  return seeds.map((seed) => {
    const input = change(anyInstance(seed, count));
    const result = plan(input, { why: false });
    if (result.fits === null) throw new Error(`Seed ${seed}: undecided.`);
    const [, ours] = timed(() => search(input));
    const model = milpOf(input);
    const [theirs, ms] = timed(() => {
      if (model === null) return null;
      const { Status, ObjectiveValue } = highs.solve(model.text, options);
      if (Status === 'Infeasible') return null;
      if (Status !== 'Optimal') throw new Error(`Seed ${seed}: ${Status}.`);
      return ObjectiveValue + model.constant;
    });
    const cost = result.fits ? result.cost : null;
    return { seed, ours: cost, theirs, ms: { ours, theirs: ms } };
  });
}

/** Questions on which the two do not agree. */
export const disagreeing = (answers: readonly Twice[]): readonly Twice[] =>
  answers.filter(({ ours, theirs }) =>
    ours === null || theirs === null ? ours !== theirs : Math.abs(ours - theirs) > CLOSE,
  );

export const seedsFrom = (first: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => first + i);

/** How many times faster the planner was, of the questions that have a plan: the least first. */
export const timesFaster = (answers: readonly Twice[]): number[] =>
  answers
    .filter(({ theirs }) => theirs !== null)
    .map(({ ms }) => ms.theirs / ms.ours)
    .sort((a, b) => a - b);
