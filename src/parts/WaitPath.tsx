import { For, type JSX } from 'solid-js';
import './WaitPath.css';

const BEADS = 12;
const STEP = 50;
const LEFT = 48;

/** Where a bead lies: along a path that winds. */
const at = (n: number): { readonly x: number; readonly y: number } => ({
  x: LEFT + n * STEP,
  y: 56 + 12 * Math.sin(n * 1.05),
});

/** Beads that are passed at a share of the way: all of them only once it is over. */
export const beadsPassed = (share: number): number =>
  share >= 1 ? BEADS : Math.min(BEADS - 1, Math.max(0, Math.floor(share * BEADS)));

/**
 * A wait without a number: a snail on a row of paper beads, on by a bead as time goes, a loaf at its
 * end. Nothing of it moves by itself.
 */
export function WaitPath(props: {
  /** How much of the wait is over, 0 to 1. */
  readonly share: number;
  /** The same in words. */
  readonly alt: string;
}): JSX.Element {
  const passed = (): number => beadsPassed(props.share);
  const snail = (): string => {
    const { x, y } = at(passed());
    return `translate(${x} ${y})`;
  };
  return (
    <svg
      class="wait-path"
      viewBox="0 0 712 92"
      role="img"
      aria-label={props.alt}
      data-passed={passed()}
    >
      <For each={Array.from({ length: BEADS }, (_, n) => n)}>
        {(n) => (
          <circle cx={at(n).x} cy={at(n).y} r="11" class={n < passed() ? 'wait-bead' : undefined} />
        )}
      </For>
      <path class="wait-loaf" d="M656 74c-14-2-14-22 0-28 8-6 28-6 36 0 14 6 14 26 0 28z" />
      <path d="M664 50l6 9M676 47l6 9" />
      <g transform={snail()}>
        <path
          class="wait-body"
          d="M-34 14c6-9 14-10 22-10h26c8 0 9-8 10-16l10 4c2 14-4 22-16 22z"
        />
        <circle class="wait-shell" cx="-4" cy="-8" r="19" />
        <path d="M-4-8c3-4 8 0 6 5-3 6-13 5-14-3-1-9 8-14 16-10M24-12l-3-10M33-9l3-9" />
      </g>
    </svg>
  );
}
