import type { JSX } from 'solid-js';
import { book } from '../../core/speech/en/book.ts';
import { bench } from '../../core/speech/en/bench.ts';
import { controls } from '../../core/speech/en/controls.ts';
import { BenchFrame } from '../../parts/BenchFrame.tsx';
import { RuledEdge } from '../../parts/RuledEdge.tsx';
import { Slab } from '../../parts/Slab.tsx';
import '../../parts/BenchWide.css';
import './Book.css';

const EDGE = Array.from({ length: 21 }, (_, i) => ({ long: i % 5 === 0 }));

/** One page of the Book; its slab goes back unless it has one of its own. */
export function BookPage(props: {
  readonly words: JSX.Element;
  /** What the slab leads back to. */
  readonly back: string;
  readonly onBack: () => void;
  readonly slab?: JSX.Element;
  readonly controls?: JSX.Element;
  /** Across the whole width. */
  readonly wide?: boolean;
}): JSX.Element {
  return (
    <BenchFrame
      label={book.title}
      wide={props.wide}
      further={controls.readOn}
      edge={<RuledEdge label={book.edge} ticks={EDGE} at={0} />}
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
    />
  );
}
