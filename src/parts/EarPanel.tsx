import { Show, type JSX } from 'solid-js';
import { Pressable } from './Pressable.tsx';
import { unbroken } from './unbroken.ts';
import './EarPanel.css';

export interface EarPanelProps {
  /** "Sound is on", "Tap to arm sound". */
  readonly sound: string;
  /** Something rings and is not heard: it stands out. */
  readonly alarm?: boolean;
  /** "Screen stays on". */
  readonly lit: string;
  /** Pressed to arm the sound; left out where there is nothing to arm. */
  readonly onArm?: (() => void) | undefined;
  /** A call that was hushed may be put off: the panel is the press that does it, before any arming. */
  readonly putOff?:
    | {
        readonly label: string;
        readonly left: string;
        /** That it will not be heard; left out where it will. */
        readonly mute?: string | undefined;
        readonly onPress: () => void;
      }
    | undefined;
}

/** `says`: what it tells by itself, where no words beside it do. */
const Ear = (props: { readonly off: boolean; readonly says?: string }): JSX.Element => (
  <svg
    viewBox="0 0 40 48"
    role="img"
    aria-hidden={props.says === undefined}
    aria-label={props.says}
    class="ear-mark"
  >
    <g fill="none" stroke="currentColor" stroke-width="3.6" stroke-linecap="round">
      <path d="M6 20C6 9 12 3 20 3s14 6 14 15c0 12-11 12-11 21 0 4-3 6-7 6s-6-2-6-6" />
      <path d="M13 20c0-6 3-9 7-9s7 3 7 8c0 6-6 6-6 11" />
      <Show when={props.off}>
        <path d="M3 45 37 5" />
      </Show>
    </g>
  </svg>
);

/**
 * What can be heard and seen of the tablet itself; where sound waits for a tap, or a call may be put off,
 * the whole of it is one press.
 */
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
    <Show
      when={props.putOff}
      fallback={
        <Show when={props.onArm} fallback={<div class="ear ear-plain">{inside()}</div>}>
          <Pressable
            class={props.alarm ? 'ear ear-alarm' : 'ear'}
            fresh={props.sound}
            onPress={() => props.onArm?.()}
          >
            {inside()}
          </Pressable>
        </Show>
      }
    >
      {(putOff) => (
        <Pressable class="ear" fresh={putOff().left} onPress={() => putOff().onPress()}>
          <span class="ear-words">
            <span>{unbroken(putOff().label)}</span>{' '}
            <b class="ear-left">
              {unbroken(putOff().left)}
              <Show when={putOff().mute}>{(mute) => <Ear off says={mute()} />}</Show>
            </b>
          </span>
        </Pressable>
      )}
    </Show>
  );
}
