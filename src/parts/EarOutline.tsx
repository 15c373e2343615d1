import type { JSX } from 'solid-js';

/** An ear, in the strokes of what it stands in: 28 wide and 42 high from 6, 3 on. */
export const EarOutline = (): JSX.Element => (
  <g>
    <path d="M6 20C6 9 12 3 20 3s14 6 14 15c0 12-11 12-11 21 0 4-3 6-7 6s-6-2-6-6" />
    <path d="M13 20c0-6 3-9 7-9s7 3 7 8c0 6-6 6-6 11" />
  </g>
);
