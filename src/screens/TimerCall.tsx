import { createMemo, Show, type JSX } from 'solid-js';
import type { Call } from '../../machines/attention/attention.ts';
import { TIMER } from '../../machines/kitchen/timers.ts';
import { callWords } from '../core/speech/words/calls.ts';
import { ear } from '../core/speech/words/kitchen.ts';
import { timer as words } from '../core/speech/words/timers.ts';
import { fill } from '../core/speech/fill.ts';
import { CallMark } from '../parts/CallMark.tsx';
import { Control } from '../parts/Control.tsx';
import { runningText } from '../parts/running.ts';
import { Sheet } from '../parts/Sheet.tsx';
import { Slab } from '../parts/Slab.tsx';
import { Words } from '../parts/Words.tsx';
import type { House } from './house.ts';
import { makePutOff } from './put-off.ts';
import { timerOver } from './timer-view.ts';
import './timers.css';

/** A timer that is over, on whatever screen: its name, how long ago, and one press that stops it. */
export function TimerCall(props: { readonly house: House }): JSX.Element {
  const over = createMemo(() => timerOver(props.house.kitchen(), props.house.ringing()));
  const hushed = (): Call | null => {
    const { calls, heard } = props.house.kitchen().attention.context;
    const one = calls.find(({ who, stage }) => who === TIMER && stage === over()?.id);
    return one && heard.includes(one.id) ? one : null;
  };
  // eslint-disable-next-line solid/reactivity -- asked anew each time
  const putOff = makePutOff(props.house, hushed);
  return (
    <Show when={over()?.id} keyed>
      {(id) => {
        const one = over()!;
        const kind = one.hot ? 'hot' : 'act';
        const title = fill(words.over, { name: one.words.name });
        return (
          <Sheet title={title} headless tone={kind === 'hot' ? 'hot' : undefined}>
            <div class="timer-over">
              <Words
                headline={title}
                detail={fill(words.ended, { time: props.house.hour(one.until) })}
                care={one.words.care}
                picture={<CallMark kind={kind} word={callWords[kind]} />}
              >
                <p class="timer-past">{runningText(one.until - props.house.now())}</p>
              </Words>
              <div class="timer-presses">
                <Slab
                  label={words.stop}
                  then={props.house.unheard() ? ear.untilTouch : words.stopThen}
                  tone={kind === 'hot' ? 'hot' : 'normal'}
                  fresh={id}
                  disabled={!props.house.holds}
                  onPress={() => void props.house.take({ kind: 'timerOff', timer: id })}
                />
                {/* Its room is kept: what comes into it moves no slab. */}
                <div class="timer-put-off">
                  <Show when={putOff.press()}>
                    {(press) => (
                      <Control
                        label={press().label}
                        value={press().left}
                        onPress={() => press().onPress()}
                      />
                    )}
                  </Show>
                </div>
              </div>
            </div>
          </Sheet>
        );
      }}
    </Show>
  );
}
