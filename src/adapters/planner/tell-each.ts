import { lay } from '../../core/day/laid/lay.ts';
import type { PlanInput, PlanResult } from '../../core/day/plan/types.ts';
import type { Answer } from './messages.ts';

/**
 * Answers one question, plan by plan; the last answer, and no other, is marked. What cannot be asked,
 * such as two touches of one name, is answered with why.
 *
 * @param now milliseconds of a clock that runs while it is planned; left out, the search counts its steps
 */
export function tellEach(
  input: PlanInput,
  tell: (answer: Answer) => void,
  now?: () => number,
): void {
  // Of one bake the first plan is the best; a better one of several only shows when it comes.
  const isOne = input.batches.length === 1;
  let last: PlanResult = { fits: null, bound: 0 };
  let over = false;
  try {
    for (const result of lay(input, now ? { now } : {})) {
      last = result;
      over = isOne || result.fits !== true;
      tell({ kind: 'plan', result, isLast: over });
    }
  } catch (error) {
    tell({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });
    return;
  }
  if (!over) tell({ kind: 'plan', result: last, isLast: true });
}
