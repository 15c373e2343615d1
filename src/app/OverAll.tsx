import { For, lazy, Show, Suspense, type JSX } from 'solid-js';
import { rehearsal, saving } from '../core/speech/en/saving.ts';
import { fill } from '../core/speech/fill.ts';
import { Notice } from '../parts/Notice.tsx';
import { RehearsalMark } from '../parts/RehearsalMark.tsx';
import type { House } from '../screens/house.ts';

const TimerCall = lazy(() => import('../screens/TimerCall.tsx'));

/** What lies over every screen: the rehearsal's mark, what the program has to tell, a timer that is over. */
export default function OverAll(props: { readonly house: House }): JSX.Element {
  return (
    <>
      <Show when={props.house.rehearsal}>
        {(rate) => (
          <RehearsalMark text={`${rehearsal.mark}, ${fill(rehearsal.faster, { rate: rate() })}`} />
        )}
      </Show>
      <div class="notices">
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
      </div>
      <Show when={Object.keys(props.house.kitchen().timers).length > 0}>
        <Suspense>
          <TimerCall house={props.house} />
        </Suspense>
      </Show>
    </>
  );
}
