import { createMemo, createSignal, Match, Show, Switch, untrack, type JSX } from 'solid-js';
import { dayAfter, type DayKey } from '../../../core/circle/day-key.ts';
import { doughPage } from '../../../core/speech/words/circle-dough.ts';
import { fill } from '../../../core/speech/fill.ts';
import type { Minutes } from '../../../core/units.ts';
import { Control } from '../../../parts/Control.tsx';
import type { DayDraft } from '../../day-draft.ts';
import { createCircleClock } from '../circle-clock.ts';
import type { FaceProps } from '../face.ts';
import { dayAt, weekdayShown } from '../today.ts';
import { BaseFace } from './BaseFace.tsx';
import { instantAt } from './instant-at.ts';
import { doughDayOf } from './dough-day.ts';
import { DoughFace, type DoughTurn } from './DoughFace.tsx';
import { dayDraftOf, layNotes, type LayNote } from './lay-day.ts';
import { LayFace } from './LayFace.tsx';
import { LevainFace } from './LevainFace.tsx';
import { LoadsFace } from './LoadsFace.tsx';
import { plannedFeeds } from './planned-feeds.ts';
import './Dough.css';

/** What a bake day's orders are made of, and how it comes onto the clock. */
export function DoughDay(
  props: Pick<FaceProps, 'house' | 'circle' | 'onBack'> & {
    readonly day: DayKey;
    readonly onDay: (draft: DayDraft) => void;
  },
): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- the house is one
  const house = props.house;
  const clock = createCircleClock(house);
  const [at, setAt] = createSignal<DoughTurn | 'all' | 'lay'>('all');
  const [dough, setDough] = createSignal(0);
  const [notes, setNotes] = createSignal<readonly LayNote[]>([]);
  const all = createMemo(() => doughDayOf(house, props.circle.circle(), props.day));
  const shown = () => all().doughs[Math.min(dough(), all().doughs.length - 1)];
  const planned = () => {
    const its = shown();
    return its ? plannedFeeds(its, house.plan(), (ready) => dayAt(house, ready) === props.day) : [];
  };
  /** Of a day after it with its name: bread that cools overnight. */
  const hour = (minute: Minutes): string => {
    const [ahead, of] = [Math.floor(minute / 1440), clock.hour(minute % 1440)];
    return ahead === 0 ? of : `${weekdayShown(dayAfter(props.day, ahead))} ${of}`;
  };
  const back = (): void => void setAt('all');
  const go = (left: readonly LayNote[]): void => {
    setNotes(left);
    if (left.length > 0) return void setAt('lay');
    back();
    props.onDay(dayDraftOf(all().batches, (minute) => instantAt(house, props.day, minute)));
  };
  const lay = (): void => go(untrack(() => layNotes(all().batches, house.plan() !== null)));
  const next = (): JSX.Element => (
    <Show when={all().doughs.length > 1}>
      <Control
        label={fill(doughPage.next, { step: dough() + 1, steps: all().doughs.length })}
        onPress={() => setDough((dough() + 1) % all().doughs.length)}
      />
    </Show>
  );
  return (
    <Switch
      fallback={
        <DoughFace
          house={house}
          date={clock.date(props.day)}
          all={all()}
          onTurn={(to) => {
            setDough(0);
            setAt(to);
          }}
          onLay={lay}
          onBack={() => props.onBack()}
        />
      }
    >
      <Match when={at() === 'bowls' && shown()}>
        {(its) => <BaseFace house={house} dough={its()} controls={next()} onBack={back} />}
      </Match>
      <Match when={at() === 'levain' && shown()}>
        {(its) => (
          <LevainFace
            house={house}
            dough={its()}
            planned={planned()}
            hour={(when) => `${house.day(when)} ${house.hour(when)}`}
            controls={next()}
            onBack={back}
          />
        )}
      </Match>
      <Match when={at() === 'loads'}>
        <LoadsFace
          house={house}
          all={all()}
          from={props.circle.circle().ways.oven?.from ?? null}
          hour={hour}
          onBack={back}
        />
      </Match>
      <Match when={at() === 'lay' && notes()[0]}>
        {(note) => (
          <LayFace house={house} note={note()} onGo={() => go(notes().slice(1))} onBack={back} />
        )}
      </Match>
    </Switch>
  );
}
