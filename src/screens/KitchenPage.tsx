import type { JSX } from 'solid-js';
import { bench } from '../core/speech/en/bench.ts';
import { controls } from '../core/speech/en/controls.ts';
import { kitchenPage } from '../core/speech/en/kitchen-page.ts';
import { BenchFrame } from '../parts/BenchFrame.tsx';
import { RuledEdge } from '../parts/RuledEdge.tsx';
import { Slab } from '../parts/Slab.tsx';
import './KitchenPage.css';

const EDGE = Array.from({ length: 13 }, (_, i) => ({ long: i % 4 === 0 }));

/** One page of the Kitchen; its slab goes back unless it has one of its own. */
export function KitchenPage(props: {
  readonly words: JSX.Element;
  readonly back: string;
  readonly onBack: () => void;
  readonly slab?: JSX.Element;
  readonly controls?: JSX.Element;
  /** One control where the ear stands on a bench. */
  readonly aside?: JSX.Element;
}): JSX.Element {
  return (
    <BenchFrame
      label={kitchenPage.title}
      further={controls.readOn}
      edge={<RuledEdge label={kitchenPage.edge} ticks={EDGE} at={0} />}
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
    />
  );
}
