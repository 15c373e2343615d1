import { onCleanup, onMount, type JSX } from 'solid-js';
import './Sheet.css';

/**
 * A page laid over the bench: a title, what it holds, and the way back among it. The focus goes into
 * it, stays in it, and returns to where it was.
 */
export function Sheet(props: {
  readonly title: string;
  readonly children: JSX.Element;
}): JSX.Element {
  let sheet!: HTMLElement;
  const before = document.activeElement;
  const stay = (e: FocusEvent): void => {
    if (e.target instanceof Node && !sheet.contains(e.target)) sheet.focus();
  };
  onMount(() => {
    sheet.focus();
    document.addEventListener('focusin', stay);
  });
  onCleanup(() => {
    document.removeEventListener('focusin', stay);
    if (before instanceof HTMLElement && before.isConnected) before.focus();
  });
  return (
    <section
      class="sheet"
      role="dialog"
      aria-modal="true"
      aria-label={props.title}
      tabindex={-1}
      ref={sheet}
    >
      <h1 class="sheet-title">{props.title}</h1>
      {props.children}
    </section>
  );
}
