import { Show, type JSX } from 'solid-js';
import type { EarShown } from '../core/ear/shown.ts';
import { HeardMark } from './HeardMark.tsx';
import { EarOutline } from './EarOutline.tsx';
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
  /** What it does that hears the baker; left out where nothing does. */
  readonly heard?:
    | {
        readonly state: EarShown['state'];
        /** The likeliest of what may be said, or what became of it. */
        readonly text: string;
        /** The same in one word, where words are bigger. */
        readonly short: string;
        /** Nothing else is to be told: it stands in the place of sound and screen. */
        readonly alone: boolean;
      }
    | undefined;
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
      <EarOutline />
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
  const heard = () => (props.heard?.alone ? props.heard : undefined);
  /** An open microphone is seen whatever else there is to tell. */
  const beside = () => {
    const { heard } = props;
    return heard?.state === 'open' || heard?.state === 'speaks' ? heard : undefined;
  };
  const mark = (): JSX.Element => (
    <Show when={beside()}>
      {(its) => (
        <>
          <HeardMark state={its().state} says={its().text} />{' '}
        </>
      )}
    </Show>
  );
  const inside = (): JSX.Element => (
    <Show
      when={heard()}
      fallback={
        <>
          <Show when={!beside()}>
            <Ear off={props.onArm !== undefined} />
          </Show>
          <span class="ear-words">
            <span>
              {mark()}
              {props.sound}
            </span>
            <span class="ear-lit">{props.lit}</span>
          </span>
        </>
      }
    >
      {(its) => (
        <span class="ear-heard">
          <HeardMark state={its().state} /> <span class="ear-text">{unbroken(its().text)}</span>
          <span class="ear-short" aria-hidden="true">
            {unbroken(its().short)}
          </span>
        </span>
      )}
    </Show>
  );
  return (
    <Show
      when={props.putOff}
      fallback={
        <Show when={props.onArm} fallback={<div class="ear ear-plain">{inside()}</div>}>
          <Pressable
            class={props.alarm ? 'ear ear-alarm' : 'ear'}
            fresh={heard()?.text ?? props.sound}
            onPress={() => props.onArm?.()}
          >
            {inside()}
          </Pressable>
        </Show>
      }
    >
      {(putOff) => (
        <Pressable
          class="ear"
          fresh={putOff().left}
          does="notYet"
          onPress={() => putOff().onPress()}
        >
          <span class="ear-words">
            <span>
              {mark()}
              {unbroken(putOff().label)}
            </span>{' '}
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
