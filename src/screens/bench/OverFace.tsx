import type { JSX } from 'solid-js';
import { bakeWords } from '../../core/speech/en/bake-words.ts';
import { bench } from '../../core/speech/en/bench.ts';
import { BenchFrame } from '../../parts/BenchFrame.tsx';
import { RuledEdge } from '../../parts/RuledEdge.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { Words } from '../../parts/Words.tsx';
import { controls } from '../../core/speech/en/controls.ts';
import { Control } from '../../parts/Control.tsx';
import type { House } from '../house.ts';

/** A bake that is over: done, or ended early; the last press can still be taken back. */
export default function OverFace(props: {
  readonly house: House;
  readonly onHome: () => void;
}): JSX.Element {
  const words = () => {
    // Turning the oven off may have come after it.
    const end = props.house
      .records()
      .findLast(
        ({ fact }) => fact.kind === 'press' && (fact.act === 'ended' || fact.act === 'noted'),
      )?.fact;
    return end?.kind === 'press' && end.act === 'ended' ? bakeWords.ended : bakeWords.done;
  };
  return (
    <BenchFrame
      label={bench.label}
      further={controls.readOn}
      edge={<RuledEdge label={words().headline} ticks={[{ long: true }]} at={0} />}
      words={<Words headline={words().headline} detail={words().detail} />}
      controls={
        <Control
          label={controls.takeBack}
          does="takeBack"
          onPress={() => void props.house.takeBack()}
        />
      }
      slab={<Slab label={words().slab} then={words().then} onPress={() => props.onHome()} />}
    />
  );
}
