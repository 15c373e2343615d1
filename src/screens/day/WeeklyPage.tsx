import { createSignal, For, Match, Switch, type JSX } from 'solid-js';
import type { WeeklyWindow } from '../../core/day/plan/wall-clock.ts';
import { awayPage } from '../../core/speech/words/day.ts';
import { showAway } from '../../core/speech/show-away.ts';
import { Control } from '../../parts/Control.tsx';
import { AsksPage } from './AsksPage.tsx';
import { HalfPage, WhatPage, type Face, type PageProps } from './WindowParts.tsx';
import { DAYS, daysWords, minuteWords, roundClock, weekdayTiles, weeklyWords } from './windows.ts';

/** Hours of every week: what they are, on which days, from when and until when. */
export function WeeklyPage(
  props: PageProps & {
    readonly window: WeeklyWindow;
    readonly onChange: (window: WeeklyWindow) => void;
  },
): JSX.Element {
  const [face, setFace] = createSignal<Face>('all');
  const all = (): void => void setFace('all');
  const set = (part: Partial<WeeklyWindow>): void => props.onChange({ ...props.window, ...part });
  const cell = (label: string, value: string, to: Face): JSX.Element => (
    <Control label={label} value={value} onPress={() => setFace(to)} />
  );
  const toggle = (day: number): void => {
    const { weekdays } = props.window;
    const next = weekdays.includes(day)
      ? weekdays.filter((other) => other !== day)
      : [...weekdays, day];
    // A window on no day is none: it is taken off instead.
    if (next.length > 0) set({ weekdays: next });
  };
  const half = (end: 'from' | 'to'): JSX.Element => (
    <HalfPage
      house={props.house}
      end={end}
      name={props.window.name}
      span={weeklyWords(props.house, props.window)}
      shown={minuteWords(props.house, props.window[end])}
      onStep={(by) => set({ [end]: roundClock(props.window[end] + by) })}
      onBack={all}
    />
  );
  return (
    <Switch
      fallback={
        <AsksPage
          house={props.house}
          headline={showAway(props.window.name)}
          back={awayPage.back}
          controls={
            <>
              <Control
                label={props.window.canBend === false ? awayPage.rigid : awayPage.bends}
                chosen={props.window.canBend === false}
                fresh="bends"
                onPress={() => set({ canBend: props.window.canBend === false })}
              />
              <Control label={awayPage.remove} onPress={() => props.onRemove()} />
            </>
          }
          onBack={() => props.onBack()}
        >
          <div class="day-grid">
            {cell(awayPage.what, showAway(props.window.name), 'what')}
            {cell(awayPage.days, daysWords(props.window.weekdays), 'days')}
            {cell(awayPage.from, minuteWords(props.house, props.window.from), 'from')}
            {cell(awayPage.to, minuteWords(props.house, props.window.to), 'to')}
          </div>
        </AsksPage>
      }
    >
      <Match when={face() === 'what'}>
        <WhatPage
          house={props.house}
          name={props.window.name}
          onPick={(name) => {
            set({ name });
            all();
          }}
          onBack={all}
        />
      </Match>
      <Match when={face() === 'days'}>
        <AsksPage
          house={props.house}
          headline={awayPage.days}
          back={showAway(props.window.name)}
          onBack={all}
          controls={
            <For each={Object.entries(DAYS)}>
              {([name, days]) => (
                <Control
                  label={awayPage[name as keyof typeof DAYS]}
                  onPress={() => {
                    set({ weekdays: [...days] });
                    all();
                  }}
                />
              )}
            </For>
          }
        >
          <div class="day-week" role="group" aria-label={awayPage.days}>
            <For each={weekdayTiles()}>
              {({ value, label }) => (
                <Control
                  label={label}
                  chosen={props.window.weekdays.includes(Number(value))}
                  onPress={() => toggle(Number(value))}
                />
              )}
            </For>
          </div>
        </AsksPage>
      </Match>
      <Match when={face() === 'from'}>{half('from')}</Match>
      <Match when={face() === 'to'}>{half('to')}</Match>
    </Switch>
  );
}
