import { For, Show, type JSX } from 'solid-js';
import { Control } from '../../../parts/Control.tsx';
import type { House } from '../../house.ts';
import type { Editing } from '../editing.ts';
import { stepNumber, type NumberKey } from './step-numbers.ts';

/** Numbers of the steps, each a press; one that the process does not use is left out. */
export function NumberPresses(props: {
  readonly house: House;
  readonly editing: Editing;
  readonly keys: readonly NumberKey[];
  readonly onNumber: (key: NumberKey) => void;
}): JSX.Element {
  const one = (key: NumberKey) => stepNumber(props.editing.formula(), key, props.house.ways());
  return (
    <For each={props.keys}>
      {(key) => (
        <Show when={one(key)}>
          {(step) => (
            <Control
              label={step().label}
              value={step().value}
              fresh={key}
              disabled={!props.house.holds}
              onPress={() => props.onNumber(key)}
            />
          )}
        </Show>
      )}
    </For>
  );
}
