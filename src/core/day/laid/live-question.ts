import type { Batch, Change, PlannedTouch } from '../plan/types.ts';
import type { AskWorld } from './ask-world.ts';
import type { Laid, Trouble } from './came-up.ts';
import type { DayPlan } from './day-plan.ts';
import type { BakeLooks } from './live-looks.ts';
import type { Move, Why } from './moved.ts';

/** What is asked of a day that runs: what it comes to; with a change; or once something came up. */
export type LiveAsk =
  | { readonly kind: 'anew' }
  | { readonly kind: 'change'; readonly change: Change }
  | { readonly kind: 'trouble'; readonly trouble: Trouble };

/** A plan that runs and the kitchen around it (`world.running`, without which no question can be asked), as plain data. */
export interface LiveQuestion {
  readonly plan: DayPlan;
  readonly world: AskWorld;
  readonly asks: LiveAsk;
}

/** What the page shows and offers besides a fresh plan. */
export interface Stands {
  /** Touches promised to the iron or to the baker that lie where nobody is. */
  readonly alone: readonly PlannedTouch[];
  /** When to go and look at what waits. */
  readonly looks: readonly BakeLooks[];
  /** A batch whose levain ripens, and a fold that was called for and not done; null: none. */
  readonly levain: string | null;
  readonly fold: { readonly batch: string; readonly touch: string } | null;
}

/** What the day comes to, asked anew: nothing moves, something does, nothing fits, or no answer yet. */
export type Anew = { readonly stands: Stands } & (
  | { readonly is: 'over' | 'asPlanned' | 'undecided' }
  | {
      readonly is: 'moved';
      readonly moves: readonly Move[];
      readonly whys: readonly Why[];
      /** Bakes that stood as planned and have to give way: nothing fits while they stay. */
      readonly others: readonly string[];
      readonly next: DayPlan;
      /** Told from other answers: an offer that was declined is not made again. */
      readonly sign: string;
    }
  | {
      readonly is: 'nothing';
      /** The bakes that nothing fitted for. */
      readonly asked: readonly Pick<Batch, 'name' | 'due' | 'startAt'>[];
      readonly changes: readonly Change[];
      readonly because: readonly string[];
    }
);

/** The answer to each kind of question; a change that would not do any more has no plan. */
export type LiveAnswer =
  | { readonly kind: 'anew'; readonly anew: Anew }
  | { readonly kind: 'change'; readonly plan: DayPlan | null }
  | { readonly kind: 'trouble'; readonly ways: readonly Laid[] };

export const NOTHING_STANDS: Stands = { alone: [], looks: [], levain: null, fold: null };

/** What a question comes to where it could not be answered at all. */
export function unanswered({ asks }: LiveQuestion): LiveAnswer {
  if (asks.kind === 'change') return { kind: 'change', plan: null };
  if (asks.kind === 'trouble') return { kind: 'trouble', ways: [] };
  return { kind: 'anew', anew: { is: 'undecided', stands: NOTHING_STANDS } };
}
