import { createMemo, createSignal, untrack, type Accessor } from 'solid-js';
import { believedBefore } from '../../../machines/kitchen/last-belief.ts';
import type { DayAsk, DayPlan } from '../../core/day/laid/day-plan.ts';
import type { PlanResult } from '../../core/day/plan/types.ts';
import type { Formula } from '../../core/formula/formula.ts';
import { touchPage } from '../../core/speech/words/day.ts';
import { fill } from '../../core/speech/fill.ts';
import { MINUTE, type Instant } from '../../core/units.ts';
import type { DayDraft } from '../day-draft.ts';
import type { House } from '../house.ts';
import { dayAndHour } from './day-hours.ts';
import { askOf, draftOf, EMPTY_BAKE, EMPTY_DAY, formulaOf, withPin } from './draft.ts';
import { createLaying, type Asked, type Laid } from './laying.ts';

/** What is asked, what was laid of it, and what may be done with that. */
export interface Planning {
  readonly formulas: Accessor<readonly Formula[]>;
  readonly draft: Accessor<DayDraft>;
  change(change: (draft: DayDraft) => DayDraft): void;
  /** What is missing before it can be laid; null: nothing. */
  readonly missing: Accessor<string | null>;
  readonly laid: Accessor<Laid | null>;
  /** Lays what is asked; false where something is missing. */
  lay(): boolean;
  /** Puts a touch to an hour, or lets it go; where that does not fit the plan before stays. */
  pin(batch: string, touch: string, to: Instant | null): void;
  readonly pinNote: Accessor<string | undefined>;
  take(ask: DayAsk, plan: Extract<PlanResult, { fits: true }>): Promise<void>;
  /** Asks a plan that stands anew. */
  askAnew(plan: DayPlan): void;
}

/** `first`: what another screen has gathered, to begin with. */
export function createPlanning(house: House, first: DayDraft = EMPTY_DAY): Planning {
  const [draft, setDraft] = createSignal<DayDraft>(first);
  const [stands, setStands] = createSignal<DayPlan | null>(null);
  /** What is laid now: pressed for, not each change on the way. */
  const [asked, setAsked] = createSignal<Asked | null>(null);
  const [pinNote, setPinNote] = createSignal<string>();
  const laid = createLaying(house, asked);
  const formulas = createMemo(() => house.formulas().flatMap(({ formula }) => formula ?? []));
  // As fine as a plan is; and nothing is made anew by the second.
  const now = createMemo(() => Math.floor(house.now() / MINUTE) * MINUTE);
  const checked = createMemo(() =>
    askOf(draft(), {
      formulas: formulas(),
      equipment: house.equipment(),
      belief: believedBefore(
        house.kitchen(),
        { id: '', at: now() },
        formulaOf(draft().bakes[0] ?? EMPTY_BAKE, formulas()),
      ),
      now: now(),
      units: house.ways(),
    }),
  );
  return {
    formulas,
    draft,
    change: (change) => void setDraft(change),
    missing: () => checked().missing,
    laid,
    pinNote,
    lay() {
      const { ask } = untrack(checked);
      if (ask === null) return false;
      setPinNote(undefined);
      setAsked({ ask, orElse: null });
      return true;
    },
    pin(batch, touch, to) {
      const before = untrack(draft);
      const of = untrack(asked)?.ask.bakes.findIndex(({ name }) => name === batch) ?? -1;
      if (of < 0) return;
      setPinNote(undefined);
      setDraft(withPin(before, of, touch, to));
      const { ask } = untrack(checked);
      if (ask === null) return void setDraft(before);
      const orElse = (): void => {
        setDraft(before);
        setPinNote(
          to === null ? touchPage.noFree : fill(touchPage.noRoom, { time: dayAndHour(house, to) }),
        );
      };
      setAsked({ ask, orElse });
    },
    async take(ask, plan) {
      const old = untrack(stands);
      await house.take({
        kind: 'plan',
        plan: {
          id: old?.id ?? `day-${house.kitchen().seq + 1}`,
          sequence: old === null ? 1 : old.sequence + 1,
          ask,
          touches: plan.touches,
          ready: plan.ready,
        },
      });
      setAsked(null);
      setStands(null);
    },
    askAnew(plan) {
      setStands(plan);
      setDraft(draftOf(plan));
    },
  };
}
