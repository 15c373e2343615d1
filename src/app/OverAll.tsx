import { createSignal, For, lazy, onCleanup, onMount, Show, Suspense, type JSX } from 'solid-js';
import { STARTER } from '../../machines/kitchen/starter.ts';
import { rehearsal, saving } from '../core/speech/words/saving.ts';
import { fill } from '../core/speech/fill.ts';
import { Notice, Notices } from '../parts/Notice.tsx';
import { RehearsalMark } from '../parts/RehearsalMark.tsx';
import { leapIsTold } from '../screens/leap-due.ts';
import { starterIsTold } from '../screens/starter-due.ts';
import type { House } from '../screens/house.ts';
import { LeapNotice } from '../screens/LeapNotice.tsx';
import { StarterNotice } from '../screens/StarterNotice.tsx';
import { TimerCall } from '../screens/TimerCall.tsx';
import { fetchLogAhead, whenIdle } from './log-ahead.ts';

const Listen = lazy(() => import('./Listen.tsx'));
const Pedal = lazy(() => import('./Pedal.tsx'));
const LeapSheet = lazy(() => import('../screens/LeapSheet.tsx'));
const StarterSheet = lazy(() => import('../screens/StarterSheet.tsx'));

/** Only a press may ask for more: what rings is here before it does. What lies over every screen: the rehearsal's mark, what the program has to tell, a timer that is over, a starter that waits; and what presses for hands that are full. */
export default function OverAll(props: {
  readonly house: House;
  /** The bake that was gone to last. */
  readonly bake?: string | null;
  /** The one whose bench is on show. */
  readonly bench?: string | null;
}): JSX.Element {
  const hasKeys = (): boolean => {
    const { pedal, mediaKeys } = props.house.equipment();
    return mediaKeys || Object.keys(pedal).length > 0;
  };
  const [tends, setTends] = createSignal(false);
  const [saysLeap, setSaysLeap] = createSignal(false);
  /** On a bench, or over all of it; the starter's own call is what is told. */
  const calls = (): boolean => (props.house.ringing()?.who ?? STARTER) !== STARTER;
  onMount(() => {
    if (props.house.records().length > 0) onCleanup(fetchLogAhead(props.house, whenIdle));
  });
  return (
    <>
      <Show when={props.house.rehearsal}>
        {(rate) => (
          <RehearsalMark text={`${rehearsal.mark}, ${fill(rehearsal.faster, { rate: rate() })}`} />
        )}
      </Show>
      <Notices>
        {/* A call comes first: what is told lies there again after the touch that hushes it. */}
        <Show when={!calls()}>
          <Show when={props.house.saving() !== 'saved'}>
            <Notice
              text={
                props.house.saving() === 'slow'
                  ? saving.notSaved
                  : fill(saving.unsaved, { count: props.house.unsaved() })
              }
            />
          </Show>
          <For each={props.house.told()}>{(t) => <Notice text={t.text} action={t.action} />}</For>
          <Show when={leapIsTold(props.house)}>
            <LeapNotice house={props.house} onSay={() => setSaysLeap(true)} />
          </Show>
          <Show when={starterIsTold(props.house.kitchen())}>
            <StarterNotice house={props.house} onSee={() => setTends(true)} />
          </Show>
        </Show>
      </Notices>
      <Show when={saysLeap() && props.house.leaps().ahead}>
        <Suspense>
          <LeapSheet house={props.house} which="ahead" onClose={() => setSaysLeap(false)} />
        </Suspense>
      </Show>
      <Show when={tends()}>
        <Suspense>
          <StarterSheet house={props.house} onClose={() => setTends(false)} />
        </Suspense>
      </Show>
      <Show when={Object.keys(props.house.kitchen().timers).length > 0}>
        <TimerCall house={props.house} />
      </Show>
      <Show when={hasKeys()}>
        <Suspense>
          <Pedal house={props.house} bake={props.bake ?? null} />
        </Suspense>
      </Show>
      <Show when={props.house.equipment().ear !== 'off'}>
        <Suspense>
          <Listen house={props.house} bake={props.bench ?? null} />
        </Suspense>
      </Show>
    </>
  );
}
