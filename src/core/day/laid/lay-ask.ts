import type { PlanInput, PlanOptions, PlanResult } from '../plan/types.ts';
import { budgetOf } from '../plan/budget.ts';
import { whatIf } from '../plan/what-if.ts';
import { askInput } from './ask-input.ts';
import type { AskTrouble } from './ask-trouble.ts';
import type { AskWorld } from './ask-world.ts';
import type { DayAsk } from './day-plan.ts';
import { lay } from './lay.ts';
import { pinsInTheWay } from './pins.ts';

/** How long is asked which pin stands in the way, ms. Judgement. */
const PINS_MS = 2_000;

/** One plan of a question, and whether no other follows. */
export interface LaidPlan {
  readonly result: PlanResult;
  readonly isLast: boolean;
}

/**
 * One plan of an ask, with the question it became; or what no hour would mend, and nothing else. No
 * trouble and no result: it could not be asked.
 */
export type LaidAsk =
  | ({ readonly troubles: readonly []; readonly input: PlanInput } & LaidPlan)
  | {
      readonly troubles: readonly AskTrouble[];
      readonly input: null;
      readonly result: null;
      readonly isLast: true;
    };

/** The plans of a question; the last, and no other, is marked. */
export function* layInput(input: PlanInput, options: PlanOptions = {}): Generator<LaidPlan, void> {
  // Of one bake the first plan is the best; a better one of several only shows when it comes.
  const isOne = input.batches.length === 1;
  let last: PlanResult = { fits: null, bound: 0 };
  let isOver = false;
  for (const result of lay(input, options)) {
    last = result;
    isOver = isOne || result.fits !== true;
    yield { result, isLast: isOver };
  }
  if (!isOver) yield { result: last, isLast: true };
}

/** The plans of an ask, each as soon as it is known; or its troubles, at once. */
export function* layAsk(
  ask: DayAsk,
  world: AskWorld,
  options: PlanOptions = {},
): Generator<LaidAsk, void> {
  const { input, troubles } = askInput(ask, world);
  if (input === null) return yield { troubles, input, result: null, isLast: true };
  const { fits } = whatIf(budgetOf(options, PINS_MS));
  for (const { result, isLast } of layInput(input, options)) {
    const pins =
      result.fits === false
        ? pinsInTheWay(ask, (other) => {
            const free = askInput(other, world).input;
            return free !== null && fits(free);
          })
        : [];
    const told =
      result.fits === false ? { ...result, changes: [...pins, ...result.changes] } : result;
    yield { troubles, input, result: told, isLast };
  }
}
