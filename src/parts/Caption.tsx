import {
  createEffect,
  createMemo,
  createSignal,
  on,
  onCleanup,
  onMount,
  untrack,
  type JSX,
} from 'solid-js';
import { afterPaint } from './after-paint.ts';
import { keepPlace } from './caption-place.ts';
import './Caption.css';

/**
 * Every word spoken, as it is spoken. `seen` false: only for ears, where the screen says it already. It
 * comes right after the picture it speaks of, for its place is measured on that.
 */
export function Caption(props: { readonly text: string; readonly seen: boolean }): JSX.Element {
  let caption!: HTMLParagraphElement;
  const wanted = createMemo(() => ({ text: props.text, seen: props.seen }));
  const [shown, setShown] = createSignal(untrack(wanted));
  // Words that came before it was first looked after are no less said: nothing is passed over.
  createEffect(
    on(wanted, (next) => {
      if (next !== untrack(shown)) onCleanup(afterPaint(() => setShown(next)));
    }),
  );
  onMount(() => onCleanup(keepPlace(caption)));
  return (
    <p
      class="caption"
      role="status"
      aria-live="polite"
      data-seen={props.seen && shown().seen ? '' : undefined}
      ref={caption}
    >
      {shown().text}
    </p>
  );
}
