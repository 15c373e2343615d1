import type { DayFact, HowSure, LOAF_SAYS, LoafCause, LoafChange } from '../log/loaf-names.ts';

/** What was read of a cut loaf when it was looked at: replay and a later tool use this and read nothing anew. */
export interface CutRead {
  readonly says: (typeof LOAF_SAYS)[number];
  readonly causes: readonly {
    readonly cause: Exclude<LoafCause, 'well'>;
    readonly sure: HowSure;
  }[];
  readonly change: LoafChange | null;
  /** Facts of the day that spoke for the first cause. */
  readonly because: readonly DayFact[];
  readonly model: string;
}
