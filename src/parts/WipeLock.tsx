import { createSignal, onCleanup, onMount, type JSX } from 'solid-js';
import './WipeLock.css';

/** How long the screen stays locked for a wet cloth. */
export const WIPE_S = 20;

/** Swallows every touch for 20 s, counts them down, then calls `onOver`. */
export function WipeLock(props: {
  readonly words: (seconds: number) => string;
  readonly onOver: () => void;
}): JSX.Element {
  const [left, setLeft] = createSignal(WIPE_S);
  onMount(() => {
    const timer = setInterval(() => {
      setLeft((s) => s - 1);
      if (left() <= 0) props.onOver();
    }, 1000);
    onCleanup(() => clearInterval(timer));
  });
  return (
    <div class="wipe" role="alertdialog" aria-label={props.words(left())}>
      <p>{props.words(left())}</p>
    </div>
  );
}
