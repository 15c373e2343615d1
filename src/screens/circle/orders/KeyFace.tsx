import { createSignal, type JSX } from 'solid-js';
import { bench } from '../../../core/speech/words/bench.ts';
import { keypad } from '../../../core/speech/words/controls.ts';
import { orderLine } from '../../../core/speech/words/orders.ts';
import { fill } from '../../../core/speech/fill.ts';
import { NumberPad } from '../../../parts/NumberPad.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import { CirclePage } from '../CirclePage.tsx';

/** A number of an order keyed in, blank at first: what stands now is told beside it. */
export function KeyFace(props: {
  readonly ask: string;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  readonly range: string;
  /** What it is now. */
  readonly now: string;
  readonly back: string;
  readonly onTake: (typed: number) => void;
  readonly onBack: () => void;
  readonly controls?: JSX.Element;
}): JSX.Element {
  const [typed, setTyped] = createSignal<number | null>(null);
  const will = (): boolean => {
    const n = typed();
    return n === null || (n >= props.least && n <= props.most);
  };
  return (
    <CirclePage
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={props.ask}>
          <NumberPad
            label={props.ask}
            unit={props.unit}
            words={{
              point: bench.point,
              clear: keypad.clear,
              hint: fill(orderLine.now, { value: props.now }),
              outside: fill(orderLine.only, { range: props.range }),
              again: keypad.again,
            }}
            min={props.least}
            max={props.most}
            onTyped={setTyped}
          />
        </Words>
      }
      slab={
        <Slab
          label={bench.thatsIt}
          then={props.back}
          fresh={props.ask}
          disabled={!will()}
          onPress={() => {
            const n = typed();
            if (n === null) props.onBack();
            else props.onTake(n);
          }}
        />
      }
      controls={props.controls}
    />
  );
}
