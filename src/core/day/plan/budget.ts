import type { Effort } from './shortest.ts';
import type { PlanOptions } from './types.ts';

/** Inner steps of the search in a millisecond, on the server it was measured on. */
const STEPS_PER_MS = 50_000;

/** How long a search may go on. */
export interface Budget {
  readonly effort: Effort;
  isSpent(): boolean;
}

/**
 * A budget of so many ms: by the clock handed in, else by the search's own steps, so that the same
 * question gets the same answer.
 */
export function budgetOf({ limitMs, now }: PlanOptions, usual: number): Budget {
  const effort: Effort = { steps: 0 };
  const limit = limitMs ?? usual;
  if (now) {
    const until = now() + limit;
    return { effort, isSpent: () => now() >= until };
  }
  return { effort, isSpent: () => effort.steps > limit * STEPS_PER_MS };
}
