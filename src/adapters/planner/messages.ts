import type { PlanInput, PlanResult } from '../../core/day/plan/types.ts';

/** What the page asks of the planner's worker. */
export interface Question {
  readonly input: PlanInput;
}

/** What it answers, plan by plan. `failed`: the question could not be asked; then nothing else comes. */
export type Answer =
  | { readonly kind: 'plan'; readonly result: PlanResult; readonly isLast: boolean }
  | { readonly kind: 'failed'; readonly message: string };
