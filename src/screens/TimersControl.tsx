import { For, type JSX } from 'solid-js';
import { timer as words } from '../core/speech/words/timers.ts';
import { fill } from '../core/speech/fill.ts';
import { Pressable } from '../parts/Pressable.tsx';
import { runningText } from '../parts/running.ts';
import type { House } from './house.ts';
import { MOST_SHOWN, timersOf, type TimerShown } from './timer-view.ts';
import './timers.css';

/** The next timers with the clock times they end; one press goes to all of them. */
export function TimersControl(props: {
  readonly house: House;
  readonly onPress: () => void;
}): JSX.Element {
  const shown = () => timersOf(props.house.kitchen()).slice(0, MOST_SHOWN);
  const time = ({ over, until }: TimerShown): string =>
    over ? runningText(until - props.house.now()) : props.house.hour(until);
  const label = (): string =>
    fill(words.running, {
      lines: shown()
        .map((one) => fill(words.line, { time: time(one), name: one.words.short }))
        .join(', '),
    });
  return (
    <div class="timers-control" data-late={shown().some(({ over }) => over) ? '' : undefined}>
      <Pressable
        class="control timers-press"
        fresh="timers"
        name={label()}
        onPress={() => props.onPress()}
      >
        <For each={shown()}>
          {(one) => (
            <span class="timers-line" data-late={one.over ? '' : undefined}>
              <b>{time(one)}</b> <span>{one.words.short}</span>
            </span>
          )}
        </For>
      </Pressable>
    </div>
  );
}
