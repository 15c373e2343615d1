import type { JSX } from 'solid-js';
import './Sheet.css';

/** A page laid over the bench: a title, what it holds, and the way back among it. */
export function Sheet(props: {
  readonly title: string;
  readonly children: JSX.Element;
}): JSX.Element {
  return (
    <section class="sheet" role="dialog" aria-modal="true" aria-label={props.title}>
      <h1 class="sheet-title">{props.title}</h1>
      {props.children}
    </section>
  );
}
