import { For, Show, type JSX } from 'solid-js';
import { running } from '../../core/speech/words/running.ts';
import { start } from '../../core/speech/words/start.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { MINUTE } from '../../core/units.ts';
import { BakeMark } from '../../parts/BakeMark.tsx';
import { Control } from '../../parts/Control.tsx';
import type { House } from '../house.ts';
import type { Other } from '../others.ts';

/** Bakes under way that found no place beside the start's slab: one press goes to each. */
export function RunningBakes(props: {
  readonly house: House;
  readonly bakes: readonly Other[];
  readonly onBake: (id: string) => void;
}): JSX.Element {
  const line = ({ name, stage, at, late }: Other): string => {
    if (at === null) return fill(running.line, { name, stage });
    const minutes = Math.max(0, Math.round((props.house.now() - at) / MINUTE));
    return late
      ? fill(running.overdue, { name, stage, ...shown({ minutes }) })
      : fill(running.lineTime, { name, stage, time: props.house.hour(at) });
  };
  return (
    <Show when={props.bakes.length > 0}>
      <section class="start-running" aria-label={start.running}>
        <h2>{start.running}</h2>
        <For each={props.bakes}>
          {(bake) => (
            <Control
              label={line(bake)}
              picture={<BakeMark mark={bake.mark} />}
              fresh={bake.id}
              onPress={() => props.onBake(bake.id)}
            />
          )}
        </For>
      </section>
    </Show>
  );
}
