import { createMemo, Match, Switch, type JSX } from 'solid-js';
import type { DayAsk } from '../../core/day/laid/day-plan.ts';
import { kitchenFor } from '../../core/day/laid/ask-world.ts';
import type { PlanResult } from '../../core/day/plan/types.ts';
import { dayPlan } from '../../core/speech/words/day.ts';
import { fill } from '../../core/speech/fill.ts';
import { touchWithin } from '../../core/speech/tell-plan.ts';
import type { Instant } from '../../core/units.ts';
import { Slab } from '../../parts/Slab.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { dayAndHour } from './day-hours.ts';
import { DayPage } from './DayPage.tsx';
import type { DayDraft } from '../day-draft.ts';
import type { Laid } from './laying.ts';
import { NothingPage } from './NothingPage.tsx';
import { nothingFits, takenWords, troublesFit, type Nothing } from './offers.ts';
import { shownOf } from './shown-of.ts';
import { TapePage } from './TapePage.tsx';

type Fits = Extract<PlanResult, { fits: true }>;

/** What became of an ask: the plan as a tape, or why there is none and what would do. */
export function PlanPage(props: {
  readonly house: House;
  readonly laid: Laid;
  readonly pinNote: string | undefined;
  readonly onTake: (ask: DayAsk, plan: Fits) => void;
  readonly onDraft: (change: (draft: DayDraft) => DayDraft) => void;
  readonly onPin: (batch: string, touch: string, at: Instant | null) => void;
  readonly onSay?: ((plan: Fits) => void) | undefined;
  readonly onAgain: () => void;
  readonly onChange: () => void;
}): JSX.Element {
  const time = (at: Instant): string => dayAndHour(props.house, at);
  /** A plan that fits, with its question: drawn anew only where it is another one. */
  const fits = createMemo(() => {
    const { laid } = props;
    if (laid.state !== 'laying' && laid.state !== 'laid') return null;
    const { result, input, ask, state } = laid;
    if (result?.fits !== true) return null;
    const isOver = state === 'laid';
    const better = isOver ? (result.atMostFromBest > 0 ? dayPlan.maybeBetter : '') : dayPlan.better;
    const notes = [...takenWords(ask, time), ...(better ? [better] : [])];
    return { ask, plan: result, day: shownOf(result, input), note: notes.join(' ') || undefined };
  });
  const nothing = createMemo((): Nothing | null => {
    const { laid } = props;
    if (laid.state === 'troubles') return troublesFit(laid.troubles, laid.ask);
    if (laid.state !== 'laid' || laid.result?.fits !== false) return null;
    const { ask, input, result } = laid;
    const places = (name: string): number => {
      const bake = ask.bakes.find((one) => one.name === name);
      return bake ? kitchenFor(ask, bake, props.house.equipment()).pots : 1;
    };
    return nothingFits(result, { ask, asked: input?.batches ?? ask.bakes, time, places });
  });
  const first = (plan: Fits): string => {
    const [touch] = plan.touches;
    return touch
      ? fill(dayPlan.takeThen, { name: touchWithin(touch.name), time: time(touch.at) })
      : '';
  };
  const plainly = (headline: string, detail: string, slab: JSX.Element): JSX.Element => (
    <DayPage
      caption={props.house.caption()}
      words={<Words headline={headline} detail={detail} />}
      slab={slab}
    />
  );
  const toAsk = (): JSX.Element => (
    <Slab
      label={dayPlan.change}
      then={dayPlan.changeThen}
      fresh={props.laid.state}
      onPress={() => props.onChange()}
    />
  );
  return (
    <Switch fallback={plainly(dayPlan.laying, dayPlan.layingDetail, toAsk())}>
      <Match when={fits()}>
        {(at) => (
          <TapePage
            house={props.house}
            ask={at().ask}
            day={at().day}
            note={at().note}
            pinNote={props.pinNote}
            slab={
              <Slab
                label={dayPlan.take}
                then={first(at().plan)}
                fresh="plan"
                disabled={!props.house.holds}
                onPress={() => props.onTake(at().ask, at().plan)}
              />
            }
            onChange={() => props.onChange()}
            onPin={(batch, touch, to) => props.onPin(batch, touch, to)}
            onSay={props.onSay && (() => props.onSay!(at().plan))}
          />
        )}
      </Match>
      <Match when={nothing()}>
        {(why) => (
          <NothingPage
            house={props.house}
            nothing={why()}
            onTake={(offer) => props.onDraft(offer.take)}
            onChange={() => props.onChange()}
          />
        )}
      </Match>
      <Match when={props.laid.state === 'failed'}>
        {plainly(
          dayPlan.failed,
          dayPlan.failedDetail,
          <Slab
            label={dayPlan.again}
            then={dayPlan.changeThen}
            fresh="failed"
            onPress={() => props.onAgain()}
          />,
        )}
      </Match>
      <Match when={props.laid.state === 'laid'}>
        {plainly(dayPlan.undecided, dayPlan.undecidedDetail, toAsk())}
      </Match>
    </Switch>
  );
}
