import { For, type JSX } from 'solid-js';
import './RuledEdge.css';

export interface RuledEdgeProps {
  /** For ears: "Step 12 of 31, bulk". */
  readonly label: string;
  /** One tick a step; `long` opens a part of the bake. */
  readonly ticks: readonly { readonly long: boolean }[];
  /** Which tick the pointer stands at, from 0. */
  readonly at: number;
}

/** The measure along the edge: its ticks are the steps of the bake, the pointer stands at this one. */
export function RuledEdge(props: RuledEdgeProps): JSX.Element {
  const place = (index: number): string =>
    `${(100 * (index + 0.5)) / Math.max(1, props.ticks.length)}%`;
  return (
    <div class="edge" role="img" aria-label={props.label}>
      <For each={props.ticks}>
        {(tick, index) => (
          <i
            class="tick"
            data-long={tick.long ? '' : undefined}
            data-done={index() < props.at ? '' : undefined}
            style={{ '--at': place(index()) }}
          />
        )}
      </For>
      <i class="pointer" style={{ '--at': place(props.at) }} />
    </div>
  );
}
