import type { JSX } from 'solid-js';
import { makeHold } from './hold.ts';
import { longestWord } from './longest-word.ts';
import { unbroken } from './unbroken.ts';
import './HoldSlab.css';

export interface HoldSlabProps {
  readonly label: string;
  /** In its place while it is held. */
  readonly holding: string;
  readonly then?: string | undefined;
  readonly onHeld: () => void;
}

/** The slab's place where a press is not enough: it fills while it is held. */
export function HoldSlab(props: HoldSlabProps): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- called when the hold is over, as a handler is
  const hold = makeHold(() => props.onHeld());
  const label = (): string => (hold.holding() ? props.holding : props.label);
  return (
    <div class="slab-room" style={{ '--longest': longestWord(label()) }}>
      <button
        type="button"
        class="pressable slab hold"
        ref={hold.ref}
        data-holding={hold.holding() ? '' : undefined}
      >
        <i class="hold-fill" aria-hidden="true" />
        <span class="slab-label hold-label">{unbroken(label())}</span>
        <span class="slab-then">{unbroken(props.then ?? '')}</span>
      </button>
    </div>
  );
}
