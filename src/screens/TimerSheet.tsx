import { createSignal, For, type JSX } from 'solid-js';
import { MOST_TIMERS } from '../../machines/kitchen/set-timer.ts';
import { TIMER_CALLS, TIMER_NAMES, type TimerName } from '../core/records/timer-names.ts';
import { bench } from '../core/speech/words/bench.ts';
import { controls, keypad } from '../core/speech/words/controls.ts';
import { timer as words, timerWords } from '../core/speech/words/timers.ts';
import { said } from '../core/speech/facts.ts';
import { fill } from '../core/speech/fill.ts';
import { MINUTE } from '../core/units.ts';
import { Control } from '../parts/Control.tsx';
import { NumberPad } from '../parts/NumberPad.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import type { House } from './house.ts';
import { timersOf } from './timer-view.ts';
import './timers.css';

/** Three digits; the longest that stands in the oven or boils is far below. Judgement. */
const MINUTES = { least: 1, most: 999 } as const;

/**
 * Sets a timer of one's own: its minutes are keyed, and the press that says what it is for starts it.
 * Those that run are stopped here.
 */
export default function TimerSheet(props: {
  readonly house: House;
  readonly onClose: () => void;
}): JSX.Element {
  const [typed, setTyped] = createSignal<number | null>(null);
  const half = () => props.house.half('timer');
  const running = () => timersOf(props.house.kitchen());
  const full = (): boolean => running().length >= MOST_TIMERS;
  const minutes = (): number | null => {
    const n = typed();
    return n !== null && n >= MINUTES.least && n <= MINUTES.most ? n : null;
  };
  const until = (): number => Math.round(props.house.now() + (minutes() ?? 0) * MINUTE);
  const title = (): string => {
    if (full()) return words.full;
    return minutes() === null
      ? words.minutes
      : fill(words.ask, { time: props.house.hour(until()) });
  };
  const start = (chosen: TimerName): void => {
    const n = minutes();
    if (n === null) return;
    const end = until();
    const { seq } = props.house.kitchen();
    half().keep('');
    void props.house
      // Named by where the log stands: pressed twice it is the same timer, set once.
      .take({
        kind: 'timer',
        timer: `t${seq}`,
        name: chosen,
        until: end,
        call: TIMER_CALLS[chosen],
      })
      .then(() =>
        props.house.say(
          fill(words.began, {
            ...said({ minutes: n, time: props.house.hour(end) }),
            name: timerWords[chosen].name,
          }),
        ),
      );
    props.onClose();
  };
  return (
    <Sheet title={title()}>
      <div class="timer-minutes">
        <NumberPad
          label={words.minutes}
          unit={words.unit}
          words={{
            point: bench.point,
            clear: keypad.clear,
            hint: words.hint,
            again: keypad.again,
          }}
          half={half()}
          possible={MINUTES.most}
          onTyped={setTyped}
        />
        <div class="timer-names" role="group" aria-label={words.names}>
          <For each={TIMER_NAMES}>
            {(one) => (
              <Control
                label={timerWords[one].name}
                strong={minutes() !== null}
                disabled={minutes() === null || full() || !props.house.holds}
                onPress={() => start(one)}
              />
            )}
          </For>
          <Control label={controls.backToBench} onPress={() => props.onClose()} />
          <For each={running()}>
            {({ id, words: own, until: end }) => (
              <Control
                label={fill(words.stopOne, { name: own.name, time: props.house.hour(end) })}
                disabled={!props.house.holds}
                onPress={() => void props.house.take({ kind: 'timerOff', timer: id })}
              />
            )}
          </For>
        </div>
      </div>
    </Sheet>
  );
}
