import { createMemo, For, Show, type JSX } from 'solid-js';
import { taskPress, tasks } from '../../core/speech/words/tasks.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { Control } from '../../parts/Control.tsx';
import { unbroken } from '../../parts/unbroken.ts';
import { focusOn } from '../focus.ts';
import type { House } from '../house.ts';
import { aheadOf, type Ahead } from './task-view.ts';
import './AheadList.css';

/** What this wait will yet call for: each with its hour, its caution, and the press that does it. */
export function AheadList(props: {
  readonly house: House;
  readonly bake: string;
  readonly onLast: () => void;
}): JSX.Element {
  const ahead = createMemo(() => {
    const focus = focusOn(props.house.kitchen(), props.bake);
    return focus ? aheadOf(focus) : [];
  });
  const take = ({ deed }: Ahead): void => {
    const isLast = ahead().length === 1;
    void props.house.take(deed).then(() => {
      if (isLast) props.onLast();
    });
  };
  const show = (text: string): string => unbroken(fill(text, shown({}, props.house.ways())));
  const call = ({ task, at }: Ahead): string => {
    const name = tasks[task].headline;
    return unbroken(fill(taskPress.calls, shown({ name, time: props.house.hour(at) })));
  };
  return (
    <Show when={ahead().length > 0} fallback={<p>{taskPress.aheadNone}</p>}>
      <ul class="ahead">
        <For each={ahead()}>
          {(one) => (
            <li>
              <div>
                <p class="ahead-call">{call(one)}</p>
                <p>{show(tasks[one.task].detail)}</p>
                <Show when={tasks[one.task].care}>{(care) => <p>{show(care())}</p>}</Show>
              </div>
              <Control
                label={tasks[one.task].done}
                fresh={one.task}
                disabled={!props.house.holds}
                onPress={() => take(one)}
              />
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}
