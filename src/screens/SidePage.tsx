import { Show, type JSX } from 'solid-js';
import { bench } from '../core/speech/words/bench.ts';
import { controls } from '../core/speech/words/controls.ts';
import { BenchFrame } from '../parts/BenchFrame.tsx';
import { Caption } from '../parts/Caption.tsx';
import { RuledEdge } from '../parts/RuledEdge.tsx';
import { Slab } from '../parts/Slab.tsx';

export interface SidePageProps {
  readonly words: JSX.Element;
  /** What the slab leads back to. */
  readonly back: string;
  readonly onBack: () => void;
  readonly slab?: JSX.Element;
  readonly controls?: JSX.Element;
}

/** A page off the bench, ruled along its edge; its slab goes back unless it has one of its own. */
export function SidePage(
  props: SidePageProps & {
    readonly label: string;
    readonly edge: string;
    /** Marks along the edge, and each how many is a long one. */
    readonly ticks: number;
    readonly long: number;
    /** Across the whole width. */
    readonly wide?: boolean | undefined;
    /** One control where the ear stands on a bench. */
    readonly aside?: JSX.Element;
    /** What is being said, on a page that speaks. */
    readonly caption?: string | undefined;
  },
): JSX.Element {
  const marks = () =>
    Array.from({ length: props.ticks }, (_, i) => ({ long: i % props.long === 0 }));
  return (
    <BenchFrame
      label={props.label}
      wide={props.wide}
      further={controls.readOn}
      edge={<RuledEdge label={props.edge} ticks={marks()} at={0} />}
      words={props.words}
      slab={
        props.slab ?? (
          <Slab
            label={bench.thatsIt}
            then={props.back}
            fresh={props.back}
            onPress={() => props.onBack()}
          />
        )
      }
      controls={props.controls}
      ear={props.aside}
      over={
        <Show when={props.caption !== undefined}>
          <Caption text={props.caption ?? ''} seen />
        </Show>
      }
    />
  );
}
