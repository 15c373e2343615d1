import { createSignal, onCleanup, onMount, Show, type JSX } from 'solid-js';
import './WipeLock.css';

/** How long the screen stays locked for a wet cloth. */
export const WIPE_S = 20;

/** Swallows every touch for 20 s, counts them down, then calls `onOver`. */
export function WipeLock(props: {
  readonly words: (seconds: number) => string;
  /** What calls meanwhile: seen through the lock, as it is heard. */
  readonly call?: string | undefined;
  readonly onOver: () => void;
}): JSX.Element {
  const [left, setLeft] = createSignal(WIPE_S);
  onMount(() => {
    const begun = performance.now();
    const timer = setInterval(() => {
      // By the clock, not by the beat: a tablet that was busy or slept counts on.
      setLeft(Math.max(0, Math.ceil(WIPE_S - (performance.now() - begun) / 1000)));
      if (left() <= 0) props.onOver();
    }, 1000);
    onCleanup(() => clearInterval(timer));
  });
  return (
    <div class="wipe" role="alertdialog" aria-label={props.words(left())}>
      <p>{props.words(left())}</p>
      <Show when={props.call}>{(call) => <p class="wipe-call">{call()}</p>}</Show>
    </div>
  );
}
