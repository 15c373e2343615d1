import type { JSX } from 'solid-js';
import { markShape, pathOf } from './mark-shapes.ts';
import './BakeMark.css';

/** The mark of one running bake, by its number from 1. The words beside it say the name. */
export function BakeMark(props: { readonly mark: number }): JSX.Element {
  return (
    <svg class="bake-mark" viewBox="0 0 24 24" aria-hidden="true" data-mark={props.mark}>
      <path d={pathOf(markShape(props.mark))} fill="currentColor" fill-rule="evenodd" />
    </svg>
  );
}
