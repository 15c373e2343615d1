import { For, type JSX } from 'solid-js';
import type { TurnedOut } from '../../core/log/turned-out.ts';
import './TurnedMark.css';

interface Stroke {
  readonly d: string;
  readonly as: 'full' | 'line' | 'cut' | 'dashed';
}

const DOME = 'M2 20C2 3 22 3 22 20Z';

/**
 * A loaf from its side, on a grid of 24 by 24: told apart by its outline and by how much of it is filled,
 * never by a colour.
 */
const STROKES: Readonly<Record<TurnedOut, readonly Stroke[]>> = {
  good: [
    { d: DOME, as: 'full' },
    { d: 'M6.5 14.5C9 10 14 8.5 17.5 9.5', as: 'cut' },
  ],
  // Small and burst at its side.
  under: [{ d: 'M5 20C5 10 16 9 18 14L22 11L20 20Z', as: 'full' }],
  // Spread flat.
  over: [{ d: 'M1 20C1 14.5 23 14.5 23 20Z', as: 'full' }],
  // A thick crust.
  dark: [
    { d: DOME, as: 'full' },
    { d: 'M7 17.5C7 10.5 17 10.5 17 17.5Z', as: 'cut' },
  ],
  pale: [{ d: DOME, as: 'line' }],
  done: [
    { d: DOME, as: 'line' },
    { d: 'M8 14.5L11 17L16.5 11.5', as: 'line' },
  ],
  // Half of one.
  early: [{ d: 'M12 7.2C6 7.2 2 11 2 20H12Z', as: 'full' }],
  open: [{ d: DOME, as: 'dashed' }],
};

/** How a bake turned out, as a shape; its word stands beside it. */
export function TurnedMark(props: { readonly turned: TurnedOut }): JSX.Element {
  return (
    <svg class="turned-mark" viewBox="0 3 24 18.5" aria-hidden="true" data-turned={props.turned}>
      <For each={STROKES[props.turned]}>{({ d, as }) => <path d={d} class={as} />}</For>
    </svg>
  );
}
