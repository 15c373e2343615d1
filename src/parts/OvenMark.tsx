import type { JSX } from 'solid-js';

/** A hot oven: its door, and heat rising over it. Drawn in lines, so that no bake's solid mark is like it. */
export function OvenMark(): JSX.Element {
  return (
    <svg class="bake-mark" viewBox="0 0 24 24" aria-hidden="true" data-mark="oven">
      <path
        d="M3 11H21V22H3ZM7 18H17M7 8V2M12 8V2M17 8V2"
        fill="none"
        stroke="currentColor"
        stroke-width="2.6"
      />
    </svg>
  );
}
