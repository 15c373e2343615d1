import type { PlannedTouch, PlanResult } from '../plan/types.ts';
import type { Celsius, Instant, Minutes } from '../../units.ts';
import type { DayAsk } from './day-plan.ts';
import type { LiveInput } from './live-input.ts';
import type { Fitting } from './moved.ts';

/** What comes up on a day that runs. `ovenDead`: until when, as far as anyone knows. */
export type Trouble =
  | { readonly trouble: 'away'; readonly from: Instant; readonly to: Instant }
  | { readonly trouble: 'overslept' }
  | { readonly trouble: 'foldMissed'; readonly batch: string; readonly touch: string }
  | { readonly trouble: 'levainLate'; readonly batch: string; readonly by: Minutes }
  | { readonly trouble: 'ovenDead'; readonly from: Instant; readonly to: Instant };

/**
 * A way on. `asPlanned`: go, nothing has to be done; `leaveFolds`; `lookFirst`: look before going, it may
 * be ready; `coolRoom` and `fridge`: the dough stands there meanwhile; `warmPlace`; `foldNow`; `fromNow`:
 * what was missed is done now; `waitCold`: the loaves wait in the fridge; `backSooner`: an absence that is
 * shorter; `later`: bread later.
 */
export interface WayOn {
  readonly way:
    | 'asPlanned'
    | 'leaveFolds'
    | 'lookFirst'
    | 'coolRoom'
    | 'fridge'
    | 'warmPlace'
    | 'foldNow'
    | 'fromNow'
    | 'waitCold'
    | 'backSooner'
    | 'later';
  readonly live: LiveInput;
  readonly ask: DayAsk;
  /** Folds that are left out. */
  readonly without?: readonly string[];
  /** The touch that is done at once. */
  readonly atOnce?: Pick<PlannedTouch, 'batch' | 'name'>;
  /** What the dough does meanwhile: as much as in so many minutes of the kitchen. */
  readonly works?: Minutes;
  /** The place's heat, and when the dough goes there. */
  readonly place?: { readonly celsius: Celsius; readonly from: Instant };
  /** Bread so much later, or back so much sooner. */
  readonly by?: Minutes;
}

export interface Laid extends WayOn {
  readonly result: Fitting;
}

/**
 * The first way that has a plan, and the next other one, each asked in turn. Bread that is later is a
 * fallback, and a plan only where nothing else is.
 */
export function planAndFallback(
  ways: readonly WayOn[],
  lay: (live: LiveInput) => PlanResult,
): readonly Laid[] {
  const found: Laid[] = [];
  for (const way of ways) {
    if (found.some((one) => one.way === way.way)) continue;
    const result = lay(way.live);
    if (result.fits) found.push({ ...way, result });
    if (found.length === 2) break;
  }
  return found;
}
