import type { Batch, PlannedTouch, Span } from '../../core/day/plan/types.ts';
import type { Instant } from '../../core/units.ts';

/** A plan with the question it answers, as the Day shows it. */
export interface DayShown {
  readonly touches: readonly PlannedTouch[];
  readonly ready: readonly { readonly batch: string; readonly at: Instant }[];
  readonly batches: readonly Batch[];
  readonly blocked: readonly Span[];
}

/** How hours, days and bakes are read here. */
export interface ReadDay {
  /** '15:05' or '3:05 pm'. */
  readonly hour: (at: Instant) => string;
  /** 'Sat'. */
  readonly day: (at: Instant) => string;
  /** The last midnight before it on the wall. */
  readonly midnight: (at: Instant) => Instant;
  /** Which of several bakes, from 1; null where there is one. */
  readonly mark: (batch: string) => number | null;
  /** Whether a touch was put to its hour by the baker. */
  readonly stays: (touch: PlannedTouch) => boolean;
}
