import { Show, type JSX } from 'solid-js';
import { Pressable } from './Pressable.tsx';
import './EarPanel.css';

export interface EarPanelProps {
  /** "Sound is on", "Tap to arm sound". */
  readonly sound: string;
  /** "Screen stays on". */
  readonly lit: string;
  /** Pressed to arm the sound; left out where there is nothing to arm. */
  readonly onArm?: (() => void) | undefined;
}

const Ear = (props: { readonly off: boolean }): JSX.Element => (
  <svg viewBox="0 0 40 48" aria-hidden="true" class="ear-mark">
    <g fill="none" stroke="currentColor" stroke-width="3.6" stroke-linecap="round">
      <path d="M6 20C6 9 12 3 20 3s14 6 14 15c0 12-11 12-11 21 0 4-3 6-7 6s-6-2-6-6" />
      <path d="M13 20c0-6 3-9 7-9s7 3 7 8c0 6-6 6-6 11" />
      <Show when={props.off}>
        <path d="M3 45 37 5" />
      </Show>
    </g>
  </svg>
);

/** What can be heard and seen of the tablet itself; where sound waits for a tap, the whole of it is one. */
export function EarPanel(props: EarPanelProps): JSX.Element {
  const inside = (): JSX.Element => (
    <>
      <Ear off={props.onArm !== undefined} />
      <span class="ear-words">
        <span>{props.sound}</span>
        <span class="ear-lit">{props.lit}</span>
      </span>
    </>
  );
  return (
    <Show when={props.onArm} fallback={<div class="ear ear-plain">{inside()}</div>}>
      <Pressable class="ear" fresh="arm" onPress={() => props.onArm?.()}>
        {inside()}
      </Pressable>
    </Show>
  );
}
