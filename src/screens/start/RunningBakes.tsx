import { For, Show, type JSX } from 'solid-js';
import { deadlineOf } from '../../../machines/kitchen/dues.ts';
import { stageOf } from '../../../machines/kitchen/stage-of.ts';
import { running } from '../../core/speech/en/running.ts';
import { start } from '../../core/speech/en/start.ts';
import { fill } from '../../core/speech/fill.ts';
import { Control } from '../../parts/Control.tsx';
import { focusOn } from '../focus.ts';
import type { House } from '../house.ts';
import { nameOf } from '../stage-names.ts';

/** Bakes under way: one press goes to each. */
export function RunningBakes(props: {
  readonly house: House;
  readonly onBake: (id: string) => void;
}): JSX.Element {
  const bakes = () => Object.values(props.house.kitchen().bakes);
  const line = (id: string): string => {
    const focus = focusOn(props.house.kitchen(), id);
    if (focus === null) return '';
    const name = focus.bake.context.recipe.formula.name;
    const stage = nameOf(focus.who, stageOf(focus.machine));
    const deadline = deadlineOf(focus.machine);
    return deadline === null
      ? fill(running.line, { name, stage })
      : fill(running.lineTime, { name, stage, time: props.house.hour(deadline) });
  };
  return (
    <Show when={bakes().length > 0}>
      <section class="start-running" aria-label={start.running}>
        <h2>{start.running}</h2>
        <For each={bakes()}>
          {(bake) => (
            <Control label={line(bake.context.id)} onPress={() => props.onBake(bake.context.id)} />
          )}
        </For>
      </section>
    </Show>
  );
}
