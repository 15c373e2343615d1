import { type JSX } from 'solid-js';
import type { Sketch as Name } from '../core/sketches/sketches.ts';
import { sketches } from '../core/speech/words/sketches.ts';
import './Sketch.css';

/**
 * A drawn act or sign, as wide as its place. It is a file of its own, drawn in this page's ink and its
 * three colours: the file's lines inherit them.
 */
export function Sketch(props: { readonly name: Name }): JSX.Element {
  return (
    <svg
      class="sketch"
      viewBox="0 0 240 180"
      preserveAspectRatio="xMinYMid"
      role="img"
      aria-label={sketches[props.name]}
    >
      <use href={`/sketches/${props.name}.svg#sketch`} />
    </svg>
  );
}
