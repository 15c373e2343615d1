import type { JSX } from 'solid-js';
import './RehearsalMark.css';

/** On every screen of a rehearsal, so that nobody bakes by it. */
export function RehearsalMark(props: { readonly text: string }): JSX.Element {
  return <p class="rehearsal">{props.text}</p>;
}
