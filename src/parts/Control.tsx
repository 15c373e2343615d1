import { Show, type JSX } from 'solid-js';
import type { EarPhrase } from '../core/ear/phrases.ts';
import { Pressable } from './Pressable.tsx';
import { softWords } from './soft-words.ts';
import './Control.css';

export interface ControlProps {
  readonly label: string;
  /** A drawing before the words; the words say it all by themselves. */
  readonly picture?: JSX.Element;
  /** What is chosen there now, under the label. */
  readonly value?: string | undefined;
  readonly disabled?: boolean | undefined;
  /** When it changes the control counts as new; its label unless given. */
  readonly fresh?: unknown;
  readonly chosen?: boolean | undefined;
  /** Told from the rest by its weight and a thicker outline. */
  readonly strong?: boolean;
  /** A name for ears where the label alone is not enough. */
  readonly name?: string | undefined;
  /** False where a key must not be enough (gates). A screen reader's click still is. */
  readonly keys?: boolean;
  /** What a pedal's key may have been taught, or may be said, and finds here. */
  readonly does?: EarPhrase | undefined;
  readonly onPress: () => void;
  /** Milliseconds; the room's clock unless given. */
  readonly now?: (() => number) | undefined;
}

/** Any press beside the slab: at least 22 mm each way. */
export function Control(props: ControlProps): JSX.Element {
  return (
    <Pressable
      class={props.strong ? 'control control-strong' : 'control'}
      onPress={() => props.onPress()}
      fresh={props.fresh ?? props.label}
      disabled={props.disabled}
      chosen={props.chosen}
      name={props.name}
      keys={props.keys ?? true}
      does={props.does}
      now={props.now}
    >
      <Show when={props.picture}>
        {(picture) => (
          <span class="control-picture" aria-hidden="true">
            {picture()}
          </span>
        )}
      </Show>
      <span class="control-label">
        <Show when={props.value} fallback={softWords(props.label)}>
          {(value) => (
            <>
              <span class="control-ask">{softWords(props.label)}</span>
              <b class="control-value">{softWords(value())}</b>
            </>
          )}
        </Show>
      </span>
    </Pressable>
  );
}
