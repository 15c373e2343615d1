import { createSignal, For, lazy, Show, Suspense, type JSX } from 'solid-js';
import { Portal } from 'solid-js/web';
import { handMark, handMarks, small } from '../../../core/speech/words/small.ts';
import { Control } from '../../../parts/Control.tsx';
import { HandMark } from '../../../parts/HandMark.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import type { House } from '../../house.ts';
import type { BenchView } from '../view.ts';
import { praised } from './praised.ts';
import type { SmallView } from './small-view.ts';
import './SmallFace.css';

const MarksSheet = lazy(() => import('../../MarksSheet.tsx'));

/** What was done at the step before, while its words stand. */
export function Praise(props: { readonly house: House; readonly view: BenchView }): JSX.Element {
  return (
    <Show when={praised(props.house, props.view)}>
      {(words) => <p class="small-praise">{unbroken(words())}</p>}
    </Show>
  );
}

/** The child's own task in its frame: what to do now, and where their mark goes. */
export function ChildTask(props: {
  readonly house: House;
  readonly told: Pick<SmallView, 'task' | 'mark'>;
}): JSX.Element {
  const [picking, setPicking] = createSignal(false);
  const marks = () => props.house.ways().marks;
  return (
    <div class="small-task">
      <p>
        <b>{small.you}</b> {unbroken(props.told.task)}
      </p>
      <Show when={props.told.mark}>
        {(mark) => (
          <Show
            when={marks().length > 0}
            fallback={<Control label={handMark.pick} onPress={() => setPicking(true)} />}
          >
            <p class="small-mark">
              <For each={marks()}>{(one) => <HandMark mark={one} alt={handMarks[one]} />}</For>
              <span>{handMark[mark()]}</span>
            </p>
          </Show>
        )}
      </Show>
      {/* Not in the words: what is shown of long ones clips what stands among them. */}
      <Portal>
        <Suspense>
          <Show when={picking()}>
            <MarksSheet house={props.house} onClose={() => setPicking(false)} />
          </Show>
        </Suspense>
      </Portal>
    </div>
  );
}
