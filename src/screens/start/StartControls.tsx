import { Show, type JSX } from 'solid-js';
import { cutWaits } from '../../core/log/cut-waits.ts';
import { bench } from '../../core/speech/words/bench.ts';
import { start } from '../../core/speech/words/start.ts';
import { Control } from '../../parts/Control.tsx';
import type { House } from '../house.ts';

/** The way to the Circle. */
export const CircleControl = (props: { readonly onCircle: () => void }): JSX.Element => (
  <Control label={start.toCircle} onPress={() => props.onCircle()} />
);

/** Beside the questions: Circle, Log and Kitchen. */
export function StartControls(props: {
  readonly house: House;
  readonly onCircle: () => void;
  readonly onLog: () => void;
  readonly onKitchen: () => void;
}): JSX.Element {
  return (
    <>
      <Show
        when={props.house.rehearsal === null}
        fallback={<Control label={bench.endRehearsal} onPress={() => props.house.endRehearsal()} />}
      >
        <CircleControl onCircle={() => props.onCircle()} />
      </Show>
      <Control
        label={start.toLog}
        value={
          // In bigger words it would take a question's place.
          props.house.ways().text === 'plain' && cutWaits(props.house.records(), props.house.now())
            ? start.cutWaits
            : undefined
        }
        onPress={() => props.onLog()}
      />
      <Control label={start.toKitchen} onPress={() => props.onKitchen()} />
    </>
  );
}
