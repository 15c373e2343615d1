import type { JSX } from 'solid-js';
import './Caption.css';

/** Every word spoken, as it is spoken. `seen` false: only for ears, where the screen says it already. */
export function Caption(props: { readonly text: string; readonly seen: boolean }): JSX.Element {
  return (
    <p class="caption" role="status" aria-live="polite" data-seen={props.seen ? '' : undefined}>
      {props.text}
    </p>
  );
}
