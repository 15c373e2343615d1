import type { Change, Span } from '../core/day/plan/types.ts';
import type { Celsius, Grams, Instant } from '../core/units.ts';

/** One bread that is asked for. `due` 'now': from now on, ready as soon as is good; null: not said yet. */
export interface BakeDraft {
  readonly formula: string | null;
  readonly loaves: number;
  /** Dough of each; left out: as the formula has it. */
  readonly piece?: Grams;
  readonly due: Instant | 'now' | null;
  readonly pins: Readonly<Record<string, Instant>>;
}

/** What the Day has gathered so far. Nothing that is measured is filled in beforehand. */
export interface DayDraft {
  readonly bakes: readonly BakeDraft[];
  readonly kitchen: Celsius | null;
  readonly away: readonly Span[];
  /** Changes agreed to where nothing fitted. */
  readonly taken: readonly Change[];
}
