import { Show, type JSX } from 'solid-js';
import type { EarPhrase } from '../core/ear/phrases.ts';
import { Pressable } from './Pressable.tsx';
import { longestWord } from './longest-word.ts';
import { unbroken } from './unbroken.ts';
import './Slab.css';

export interface SlabProps {
  /** What pressing it says: "That’s done". */
  readonly label: string;
  /** What comes after, one short line. */
  readonly then?: string | undefined;
  readonly tone?: 'normal' | 'hot' | undefined;
  readonly disabled?: boolean | undefined;
  /** When it changes the slab counts as new and arms after 400 ms; its words unless given. */
  readonly fresh?: unknown;
  /** What may be said for it; left out where it is pressed by hand or foot alone. */
  readonly does?: EarPhrase | undefined;
  readonly onPress: () => void;
  /** Milliseconds; the room's clock unless given. */
  readonly now?: (() => number) | undefined;
}

/** The big press that says "that's done". Exactly one a screen. */
export function Slab(props: SlabProps): JSX.Element {
  return (
    <div
      class="slab-room"
      data-tone={props.tone === 'hot' ? 'hot' : undefined}
      style={{ '--longest': longestWord(props.label) }}
    >
      <Pressable
        class="slab"
        main
        onPress={() => props.onPress()}
        fresh={props.fresh ?? `${props.label}\n${props.then ?? ''}`}
        disabled={props.disabled}
        does={props.does}
        now={props.now}
      >
        <span class="slab-label">{unbroken(props.label)}</span>
        <Show when={props.then}>{(then) => <span class="slab-then">{unbroken(then())}</span>}</Show>
      </Pressable>
    </div>
  );
}
