import { createSignal, For, Show, type JSX } from 'solid-js';
import { MOST_TIMERS } from '../../machines/kitchen/timers.ts';
import { TIMER_CALLS, TIMER_NAMES, type TimerName } from '../core/records/timer-names.ts';
import { bench } from '../core/speech/en/bench.ts';
import { controls, keypad } from '../core/speech/en/controls.ts';
import { timer as words, timerWords } from '../core/speech/en/timers.ts';
import { said } from '../core/speech/facts.ts';
import { fill } from '../core/speech/fill.ts';
import { MINUTE } from '../core/units.ts';
import { Control } from '../parts/Control.tsx';
import { NumberPad } from '../parts/NumberPad.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { Slab } from '../parts/Slab.tsx';
import type { House } from './house.ts';
import { timersOf } from './timer-view.ts';
import './timers.css';

/** Three digits; the longest that stands in the oven or boils is far below. Judgement. */
const MINUTES = { least: 1, most: 999 } as const;

/** Sets a timer of one's own by name and minutes, and stops those that run. */
export default function TimerSheet(props: {
  readonly house: House;
  readonly onClose: () => void;
}): JSX.Element {
  const [name, setName] = createSignal<TimerName | null>(null);
  const [typed, setTyped] = createSignal<number | null>(null);
  const running = () => timersOf(props.house.kitchen());
  const full = (): boolean => running().length >= MOST_TIMERS;
  const minutes = (): number | null => {
    const n = typed();
    return n !== null && n >= MINUTES.least && n <= MINUTES.most ? n : null;
  };
  const until = (): number => Math.round(props.house.now() + (minutes() ?? 0) * MINUTE);
  const start = (chosen: TimerName): void => {
    const n = minutes();
    if (n === null) return;
    const end = until();
    const { seq } = props.house.kitchen();
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
    <Show
      when={name()}
      fallback={
        <Sheet title={full() ? words.full : words.ask}>
          <div class="sheet-grid">
            <Control label={controls.backToBench} onPress={() => props.onClose()} />
            <For each={TIMER_NAMES}>
              {(one) => (
                <Control
                  label={timerWords[one].name}
                  disabled={full() || !props.house.holds}
                  onPress={() => setName(one)}
                />
              )}
            </For>
          </div>
          <Show when={running().length > 0}>
            <div class="sheet-grid">
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
          </Show>
        </Sheet>
      }
    >
      {(chosen) => (
        <Sheet title={fill(words.minutes, { name: timerWords[chosen()].name })}>
          <div class="timer-minutes">
            <NumberPad
              label={fill(words.minutes, { name: timerWords[chosen()].name })}
              unit={words.unit}
              words={{ point: bench.point, clear: keypad.clear, hint: words.hint }}
              possible={MINUTES.most}
              onTyped={setTyped}
            />
            <div class="timer-side">
              <Control
                label={words.another}
                onPress={() => {
                  setTyped(null);
                  setName(null);
                }}
              />
              <Slab
                label={words.start}
                then={
                  minutes() === null
                    ? words.key
                    : fill(words.starts, { time: props.house.hour(until()) })
                }
                fresh={`start ${chosen()}`}
                disabled={minutes() === null || !props.house.holds}
                onPress={() => start(chosen())}
              />
            </div>
          </div>
        </Sheet>
      )}
    </Show>
  );
}
