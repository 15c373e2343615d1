import { Show, type JSX } from 'solid-js';
import type { HandMark as Mark } from '../core/small/marks.ts';
import './HandMark.css';

/** Cut paper on a grid of 24 by 24: one outline, and what is drawn over it. */
const SHAPES: Readonly<Record<Mark, { readonly cut: string; readonly over?: string }>> = {
  star: {
    cut: 'M12 2.2l2.9 6.2 6.8.8-5 4.6 1.3 6.7L12 17.2l-6 3.3 1.3-6.7-5-4.6 6.8-.8z',
  },
  moon: {
    cut: 'M15.5 2.6A9.6 9.6 0 1 0 21.4 15.6 8 8 0 0 1 15.5 2.6z',
  },
  fish: {
    cut: 'M2 12c3-5 8.2-6.4 13-2.6L21.6 5.4v13.2L15 14.6C10.2 18.4 5 17 2 12z',
    over: 'M6.6 10.6v.2M10.6 9.4c1.4 1.6 1.4 3.6 0 5.2',
  },
  leaf: {
    cut: 'M12 1.8c6.4 4 7.6 11 0 17.4-7.6-6.4-6.4-13.4 0-17.4z',
    over: 'M12 7v15.2M12 15l3.4-3M12 12.4L8.8 9.8',
  },
  boat: {
    cut: 'M1.8 15.4h20.4l-3.6 5.8H5.4zM12.8 2.2v10.6h7.6zM10.8 5v7.8H4.8z',
  },
  sun: {
    cut: 'M12 6.8a5.2 5.2 0 1 0 .1 0z',
    over: 'M12 1.4v2.6M12 20v2.6M1.4 12h2.6M20 12h2.6M4.5 4.5l1.9 1.9M17.6 17.6l1.9 1.9M4.5 19.5l1.9-1.9M17.6 6.4l1.9-1.9',
  },
};

/** A child's own mark. `alt`: what it is, for ears; left out where words beside it say so. */
export function HandMark(props: { readonly mark: Mark; readonly alt?: string }): JSX.Element {
  return (
    <svg
      class="hand-mark"
      viewBox="0 0 24 24"
      data-mark={props.mark}
      role="img"
      aria-label={props.alt}
      aria-hidden={props.alt === undefined}
    >
      <path class="hand-mark-cut" d={SHAPES[props.mark].cut} />
      <Show when={SHAPES[props.mark].over}>{(over) => <path d={over()} />}</Show>
    </svg>
  );
}
