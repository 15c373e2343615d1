import { createSignal, For, Match, Show, Switch, type JSX } from 'solid-js';
import type { Span } from '../../core/day/plan/types.ts';
import type { WeeklyWindow } from '../../core/day/plan/wall-clock.ts';
import { showAway } from '../../core/speech/show-away.ts';
import { LIMITS } from '../../core/kitchen/limits.ts';
import { askPage, awayPage } from '../../core/speech/words/day.ts';
import { Control } from '../../parts/Control.tsx';
import type { House } from '../house.ts';
import { AsksPage } from './AsksPage.tsx';
import { OncePage } from './OncePage.tsx';
import { WeeklyPage } from './WeeklyPage.tsx';
import { daysWords, newOnce, newWeekly, onceWords, weeklyWords } from './windows.ts';

interface AwayProps {
  readonly house: House;
  /** Hours away on one day. */
  readonly away: readonly Span[];
  readonly onAway: (away: readonly Span[]) => void;
  readonly onWeek: () => void;
  readonly onBack: () => void;
}

/** One-offs beside the week's hours: more than so many are no plan of a bake. Judgement. */
const MOST_ONCE = 6;

/** All hours in which no hands are there, week by week and once; each behind its own press. */
export function AwayFace(props: AwayProps): JSX.Element {
  const [open, setOpen] = createSignal<{ kind: 'weekly' | 'once'; at: number } | null>(null);
  const week = () => props.house.equipment().week;
  const setWeek = (next: readonly WeeklyWindow[]): void => {
    props.house.equip({ week: next });
    props.onWeek();
  };
  const addWeekly = (): void => {
    setWeek([...week(), newWeekly()]);
    setOpen({ kind: 'weekly', at: week().length - 1 });
  };
  const addOnce = (): void => {
    props.onAway([...props.away, newOnce(props.house.now())]);
    setOpen({ kind: 'once', at: props.away.length - 1 });
  };
  const date = (span: Span): string => props.house.day(span.from);
  const list = (): JSX.Element => (
    <AsksPage
      house={props.house}
      headline={awayPage.title}
      detail={awayPage.detail}
      back={askPage.title}
      fresh="away"
      onBack={() => props.onBack()}
      controls={
        <>
          <Show when={week().length < LIMITS.week.most}>
            <Control label={awayPage.addWeekly} onPress={addWeekly} />
          </Show>
          <Show when={props.away.length < MOST_ONCE}>
            <Control label={awayPage.addOnce} onPress={addOnce} />
          </Show>
        </>
      }
    >
      <div class="day-grid">
        <For each={week()}>
          {(window, at) => (
            <Control
              label={`${showAway(window.name)}, ${daysWords(window.weekdays)}`}
              value={weeklyWords(props.house, window)}
              onPress={() => setOpen({ kind: 'weekly', at: at() })}
            />
          )}
        </For>
        <For each={props.away}>
          {(span, at) => (
            <Control
              label={`${showAway(span.name ?? '')}, ${date(span)}`}
              value={onceWords(props.house, span)}
              onPress={() => setOpen({ kind: 'once', at: at() })}
            />
          )}
        </For>
      </div>
    </AsksPage>
  );
  const at = (): number => open()?.at ?? -1;
  const close = (): void => void setOpen(null);
  return (
    <Switch fallback={list()}>
      <Match when={open()?.kind === 'weekly' && week()[at()]}>
        {(window) => (
          <WeeklyPage
            house={props.house}
            window={window()}
            onChange={(next) => setWeek(week().with(at(), next))}
            onRemove={() => {
              const without = week().toSpliced(at(), 1);
              close();
              setWeek(without);
            }}
            onBack={close}
          />
        )}
      </Match>
      <Match when={open()?.kind === 'once' && props.away[at()]}>
        {(span) => (
          <OncePage
            house={props.house}
            span={span()}
            onChange={(next) => props.onAway(props.away.with(at(), next))}
            onRemove={() => {
              const without = props.away.toSpliced(at(), 1);
              close();
              props.onAway(without);
            }}
            onBack={close}
          />
        )}
      </Match>
    </Switch>
  );
}
