import type { AskWorld } from '../../core/day/laid/ask-world.ts';
import type { DayAsk } from '../../core/day/laid/day-plan.ts';
import type { LaidAsk, LaidPlan } from '../../core/day/laid/lay-ask.ts';
import type { PlanInput } from '../../core/day/plan/types.ts';

/** What the page asks of the planner's worker. */
export type Question =
  /** `why` false: what would do where nothing fits is not looked for. */
  | { readonly kind: 'input'; readonly input: PlanInput; readonly why?: false }
  | { readonly kind: 'ask'; readonly ask: DayAsk; readonly world: AskWorld };

/**
 * What it answers, plan by plan, as the question was put. `failed`: the question could not be asked, such
 * as two touches of one name; then nothing else comes.
 */
export type Answer =
  | { readonly kind: 'plan'; readonly plan: LaidPlan | LaidAsk }
  | { readonly kind: 'failed'; readonly message: string };
