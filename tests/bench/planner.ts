import { plan } from '../../src/core/day/plan.ts';
import { boardOf } from '../../src/core/day/plan/board.ts';
import { onePlan } from '../../src/core/day/plan/one-plan.ts';
import type { PlanInput } from '../../src/core/day/plan/types.ts';
import { anyInstance } from '../core/day/support/instances.ts';
import { answerTwice, seedsFrom, timesFaster } from '../core/day/support/solver.ts';
import { spreadOf, type Spread } from './spread.ts';

/** Times of one kind of question, the planner warm as after a day's first plans. */
export interface PlanTimes {
  readonly what: string;
  readonly times: Spread;
}

const questions = (first: number, count: number, batches: number, has: boolean): PlanInput[] => {
  const found: PlanInput[] = [];
  for (let seed = first; found.length < count; seed += 1) {
    const input = anyInstance(seed, batches);
    if ((plan(input, { why: false }).fits === true) === has) found.push(input);
  }
  return found;
};

const timesOf = (inputs: readonly PlanInput[], work: (input: PlanInput) => unknown): Spread =>
  spreadOf(
    inputs.map((input) => {
      const began = performance.now();
      work(input);
      return performance.now() - began;
    }),
  );

/** What a plan takes: alone, with its slack, of two batches, and what would do where there is none. */
export function planTimes(): PlanTimes[] {
  const one = questions(1, 60, 1, true);
  const none = questions(1, 20, 1, false);
  const two = questions(1, 20, 2, true);
  const search = (input: PlanInput): void => {
    const board = boardOf(input);
    onePlan(board, 0, { forbid: null, room: board.room }, { steps: 0 });
  };
  timesOf(one, search);
  timesOf(none, plan);
  return [
    { what: 'plan of one bake', times: timesOf(one, search) },
    { what: 'the same with its slack', times: timesOf(one, plan) },
    { what: 'plan of two bakes, proven, with slack', times: timesOf(two, plan) },
    { what: 'one bake that fits nowhere: what would do, and why', times: timesOf(none, plan) },
  ];
}

/** How many times faster than the solver HiGHS a plan is found in one process, by the number of bakes. */
export async function againstSolver(): Promise<{ batches: number; median: number; of: number }[]> {
  const asked = [
    { batches: 1, seeds: seedsFrom(1001, 60) },
    { batches: 2, seeds: seedsFrom(1, 20) },
  ];
  const found = [];
  for (const { batches, seeds } of asked) {
    const ratios = timesFaster(await answerTwice(seeds, batches));
    found.push({ batches, median: ratios[Math.floor(ratios.length / 2)]!, of: ratios.length });
  }
  return found;
}
