import { onCleanup, onMount, type JSX } from 'solid-js';
import { keepPlace } from './caption-place.ts';
import './Caption.css';

/** Every word spoken, as it is spoken. `seen` false: only for ears, where the screen says it already. */
export function Caption(props: { readonly text: string; readonly seen: boolean }): JSX.Element {
  let caption!: HTMLParagraphElement;
  onMount(() => onCleanup(keepPlace(caption)));
  return (
    <p
      class="caption"
      role="status"
      aria-live="polite"
      data-seen={props.seen ? '' : undefined}
      ref={caption}
    >
      {props.text}
    </p>
  );
}
