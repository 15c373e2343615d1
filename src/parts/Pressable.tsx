import type { JSX } from 'solid-js';
import type { EarPhrase } from '../core/ear/phrases.ts';
import { soft } from '../core/speech/words/soft.ts';
import { makePress } from './press.ts';
import './Pressable.css';

export interface PressableProps {
  readonly class: string;
  readonly onPress: () => void;
  /** When it changes the button counts as new. */
  readonly fresh?: unknown;
  readonly disabled?: boolean | undefined;
  /** Milliseconds; the room's clock unless given. */
  readonly now?: (() => number) | undefined;
  readonly quick?: boolean;
  readonly keys?: boolean;
  /** The slab, and nothing else. */
  readonly main?: boolean;
  /** What a pedal's key may have been taught, or may be said, and finds here. */
  readonly does?: EarPhrase | undefined;
  /** A name for ears where the words inside are not enough. */
  readonly name?: string | undefined;
  /** For a choice that stays: whether it is chosen. */
  readonly chosen?: boolean | undefined;
  readonly children: JSX.Element;
}

/** Anything that may be pressed: square, one corner clipped, outlined in ink. */
export function Pressable(props: PressableProps): JSX.Element {
  const press = makePress({
    onPress: () => props.onPress(),
    // eslint-disable-next-line solid/reactivity -- the clock and the manners of a button do not change
    now: props.now,
    disabled: () => props.disabled ?? false,
    fresh: () => props.fresh,
    // eslint-disable-next-line solid/reactivity
    quick: props.quick ?? false,
    // eslint-disable-next-line solid/reactivity
    keys: props.keys ?? true,
    // eslint-disable-next-line solid/reactivity
    main: props.main ?? false,
  });
  return (
    <button
      type="button"
      class={`pressable ${props.class}`}
      ref={press.ref}
      aria-label={props.name === undefined ? undefined : soft.soften(props.name)}
      aria-disabled={props.disabled ? 'true' : undefined}
      aria-pressed={props.chosen}
      data-does={props.does}
      data-by-hand={props.keys === false ? '' : undefined}
      data-pressed={press.pressed() ? '' : undefined}
    >
      {props.children}
    </button>
  );
}
