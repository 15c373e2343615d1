import type { AskWorld } from '../../core/day/laid/ask-world.ts';
import type { DayAsk } from '../../core/day/laid/day-plan.ts';
import type { LaidAsk } from '../../core/day/laid/lay-ask.ts';
import type { LiveAnswer, LiveQuestion } from '../../core/day/laid/live-question.ts';

/** What the page asks of the planner's worker. */
export type Question =
  | { readonly kind: 'ask'; readonly ask: DayAsk; readonly world: AskWorld }
  | { readonly kind: 'live'; readonly question: LiveQuestion };

/**
 * What it answers, plan by plan, as the question was put. `failed`: the question could not be asked, such
 * as two touches of one name; then nothing else comes.
 */
export type Answer =
  | { readonly kind: 'plan'; readonly plan: LaidAsk }
  | { readonly kind: 'live'; readonly answer: LiveAnswer }
  | { readonly kind: 'failed'; readonly message: string };
