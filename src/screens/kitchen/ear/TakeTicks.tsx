import { For, type JSX } from 'solid-js';
import { TAKES } from '../../../core/ear/person.ts';
import { earTakes } from '../../../core/speech/words/ear-kitchen.ts';
import { fill } from '../../../core/speech/fill.ts';

/** A box for each take, ticked once it is said. */
export function TakeTicks(props: { readonly done: number }): JSX.Element {
  const boxes = Array.from({ length: TAKES }, (_, n) => n);
  return (
    <div
      class="ear-ticks"
      role="img"
      aria-label={fill(earTakes.takes, { done: props.done, of: TAKES })}
    >
      <For each={boxes}>
        {(n) => (
          <svg viewBox="0 0 24 24" data-ticked={n < props.done ? '' : undefined}>
            <rect x="2" y="2" width="20" height="20" />
            <path d="M6 12.5l4.2 4.3L18 7.6" />
          </svg>
        )}
      </For>
    </div>
  );
}
