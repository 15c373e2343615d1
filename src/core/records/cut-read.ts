import type { LoafChange } from '../log/loaf-change.ts';
import type { DayFact } from '../log/loaf-day.ts';
import type { LoafCause } from '../log/loaf-signs.ts';
import type { HowSure, LoafRead } from '../log/read-loaf.ts';

/** What was read of a cut loaf when it was looked at: replay and a later tool use this and read nothing anew. */
export interface CutRead {
  readonly says: LoafRead['says'];
  readonly causes: readonly {
    readonly cause: Exclude<LoafCause, 'well'>;
    readonly sure: HowSure;
  }[];
  readonly change: LoafChange | null;
  /** Facts of the day that spoke for the first cause. */
  readonly because: readonly DayFact[];
  readonly model: string;
}
