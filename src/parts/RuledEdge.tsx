import { For, type JSX } from 'solid-js';
import { BakeMark } from './BakeMark.tsx';
import { OvenMark } from './OvenMark.tsx';
import './RuledEdge.css';

/** A running bake by its number, or the oven that heats ahead of its loaves. */
export type EdgeMark = number | 'oven';

export interface RuledEdgeProps {
  /** For ears: "Step 12 of 31, bulk". */
  readonly label: string;
  /** One tick a step; `long` opens a part of the bake. */
  readonly ticks: readonly { readonly long: boolean }[];
  /** Which tick the pointer stands at, from 0. */
  readonly at: number;
  /** Marks of other bakes and how far each is, 0 to 1. */
  readonly others?: readonly { readonly mark: EdgeMark; readonly at: number }[] | undefined;
}

/** The share of the edge a pointer and a mark need between their middles. */
const CLEAR = 0.046;

/** The measure along the edge: its ticks are the steps of the bake, the pointer stands at this one. */
export function RuledEdge(props: RuledEdgeProps): JSX.Element {
  const place = (index: number): string =>
    `${(100 * (index + 0.5)) / Math.max(1, props.ticks.length)}%`;
  /** A mark keeps clear of the pointer and of the marks before it: it goes on to the next free place. */
  const beside = () => {
    const taken = [(props.at + 0.5) / Math.max(1, props.ticks.length)];
    return (props.others ?? []).map(({ mark, at }) => {
      const step = at > 0.8 ? -CLEAR : CLEAR;
      let free = at;
      const hits = () => taken.find((other) => Math.abs(other - free) < CLEAR - 1e-6);
      for (let other = hits(); other !== undefined; other = hits()) free = other + step;
      taken.push(free);
      return { mark, at: free };
    });
  };
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
      <For each={beside()}>
        {(other) => (
          <i class="edge-other" style={{ '--at': `${100 * other.at}%` }}>
            {other.mark === 'oven' ? <OvenMark /> : <BakeMark mark={other.mark} />}
          </i>
        )}
      </For>
      <i class="pointer" style={{ '--at': place(props.at) }} />
    </div>
  );
}
