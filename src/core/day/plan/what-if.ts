import { DAY } from '../../units.ts';
import { boardOf } from './board.ts';
import type { Budget } from './budget.ts';
import { anyPlan } from './joint.ts';
import type { PlanInput } from './types.ts';

/** How far back planning is let begin where that is asked: four days. */
const EARLIER = 4 * DAY;

/** Asks of changed questions whether they have a plan. */
export interface WhatIf {
  fits(input: PlanInput): boolean;
  /** That it has none, proven. */
  cannotFit(input: PlanInput): boolean;
}

export const whatIf = (budget: Budget): WhatIf => {
  const ask = (input: PlanInput): boolean | null =>
    budget.isSpent() ? null : anyPlan(boardOf(input), budget);
  return { fits: (input) => ask(input) === true, cannotFit: (input) => ask(input) === false };
};

export const withoutPlanFrom = (input: PlanInput): PlanInput => ({
  ...input,
  planFrom: input.planFrom - EARLIER,
});

/** The question with only some of its blocked windows, by index. */
export const withWindows = (input: PlanInput, kept: readonly number[]): PlanInput => ({
  ...input,
  blocked: input.blocked.filter((_, i) => kept.includes(i)),
});

/**
 * The least whole number from 1 to `most` for which something holds that goes on holding; null where
 * it does not at `most`.
 */
export function least(most: number, holds: (count: number) => boolean): number | null {
  if (most < 1 || !holds(most)) return null;
  let [no, yes] = [0, most];
  while (yes - no > 1) {
    const middle = Math.floor((no + yes) / 2);
    if (holds(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}
