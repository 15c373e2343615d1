import type { Recipe } from '../../formula/recipe.ts';
import type { Belief } from '../../readiness/belief.ts';
import type { Celsius, Instant } from '../../units.ts';
import type { Change, PlannedTouch, Span } from '../plan/types.ts';

/** One bake that is asked of a day. `name` is the plan's name of it: its bread's, told apart by a number. */
export interface AskedBake {
  readonly name: string;
  readonly recipe: Recipe;
  /** The hour its bread is wanted; null: as soon as is good, from `startAt` on. */
  readonly due: Instant | null;
  readonly startAt: Instant | null;
  /** The bake it has become; null until it is begun. */
  readonly bake: string | null;
  /** Touches the baker put to an hour, by the plan's names. */
  readonly pins: Readonly<Record<string, Instant>>;
}

/**
 * All that is asked of a day: what is baked, how warm it is, and when the baker is away besides the
 * week's hours. `taken`: changes the baker agreed to where nothing fitted.
 */
export interface DayAsk {
  readonly bakes: readonly AskedBake[];
  readonly kitchen: Celsius;
  readonly belief: Belief;
  readonly away: readonly Span[];
  readonly taken?: readonly Change[];
}

/** A plan as it was accepted. `id` stays through its re-plans, `sequence` grows by one with each. */
export interface DayPlan {
  readonly id: string;
  readonly sequence: number;
  readonly ask: DayAsk;
  readonly touches: readonly PlannedTouch[];
  readonly ready: readonly { readonly batch: string; readonly at: Instant }[];
}
