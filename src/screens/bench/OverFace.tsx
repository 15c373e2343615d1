import { Show, type JSX } from 'solid-js';
import { bakeWords } from '../../core/speech/words/bake-words.ts';
import { bench } from '../../core/speech/words/bench.ts';
import { BenchFrame } from '../../parts/BenchFrame.tsx';
import { RuledEdge } from '../../parts/RuledEdge.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { Words } from '../../parts/Words.tsx';
import { controls } from '../../core/speech/words/controls.ts';
import { Control } from '../../parts/Control.tsx';
import type { House } from '../house.ts';

/** A bake that is over: done, ended early, or not begun after all; its last press can still be taken back. */
export default function OverFace(props: {
  readonly house: House;
  readonly bake: string;
  readonly onHome: () => void;
}): JSX.Element {
  const facts = () => props.house.records().map(({ fact }) => fact);
  const begun = (): boolean => {
    const start = facts().find((fact) => fact.kind === 'start' && fact.bake === props.bake);
    return !facts().some((fact) => fact.kind === 'takeBack' && fact.target === start?.id);
  };
  const words = () => {
    if (!begun()) return bench.notBegun;
    // Turning the oven off may have come after it.
    const end = facts().findLast(
      (fact) =>
        fact.kind === 'press' &&
        fact.who === props.bake &&
        (fact.act === 'ended' || fact.act === 'noted'),
    );
    return end?.kind === 'press' && end.act === 'ended' ? bakeWords.ended : bakeWords.done;
  };
  return (
    <BenchFrame
      label={bench.label}
      further={controls.readOn}
      edge={<RuledEdge label={words().headline} ticks={[{ long: true }]} at={0} />}
      words={<Words headline={words().headline} detail={words().detail} />}
      controls={
        <Show when={begun()}>
          <Control
            label={controls.takeBack}
            does="takeBack"
            onPress={() => void props.house.takeBack()}
          />
        </Show>
      }
      slab={<Slab label={words().slab} then={words().then} onPress={() => props.onHome()} />}
    />
  );
}
