import { betterPlans } from '../plan.ts';
import { budgetOf } from '../plan/budget.ts';
import type { PlanInput, PlanOptions, PlanResult } from '../plan/types.ts';
import { firstHour, firstStart } from './first-hour.ts';
import { withoutHotOven } from './hot-oven.ts';

/** How long is looked further for what would do, ms. Judgement. */
const FURTHER_MS = 3_000;

/** Where nothing fits: a later start besides, and where nothing near would do, the first hour that would. */
function lookFurther(input: PlanInput, options: PlanOptions, result: PlanResult): PlanResult {
  if (result.fits !== false || options.why === false) return result;
  const started = firstStart(input, budgetOf(options, FURTHER_MS));
  const changes = [...result.changes, ...started];
  if (changes.length > 0 || (result.together ?? []).length > 0) return { ...result, changes };
  return { ...result, ...firstHour(input, budgetOf(options, FURTHER_MS)) };
}

/**
 * The plans of a question as `betterPlans` tells them, each oven turned on once. Where nothing fits it looks further than the
 * planner does: how much later a bake that begins now would have to begin, and where no near change would
 * do, the first hour in the next days at which the bread could be ready.
 */
export function* lay(input: PlanInput, options: PlanOptions = {}): Generator<PlanResult, void> {
  for (const result of betterPlans(input, options))
    yield withoutHotOven(input, lookFurther(input, options, result));
}
