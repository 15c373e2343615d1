import { createSignal, type JSX } from 'solid-js';
import { bench } from '../../../core/speech/words/bench.ts';
import { cupboard } from '../../../core/speech/words/cupboard.ts';
import { keypad } from '../../../core/speech/words/controls.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { NumberPad } from '../../../parts/NumberPad.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { CupboardPage } from './CupboardPage.tsx';

/**
 * A number keyed in, blank at first: what stands now is told beside it. Blank is taken where something
 * stands already, and leaves it as it is.
 */
export function KeyFace(props: {
  readonly house: House;
  readonly ask: string;
  /** Of what it is asked: what is half keyed of one is not another's. */
  readonly of: string;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  readonly hint: string;
  /** Nothing typed is an answer too. */
  readonly blank: boolean;
  /** What the slab leads to. */
  readonly then: string;
  readonly back: string;
  /** Null: nothing was typed. */
  readonly onTake: (typed: number | null) => void;
  readonly onBack: () => void;
  /** One press beside the way back. */
  readonly beside?: JSX.Element;
}): JSX.Element {
  const [typed, setTyped] = createSignal<number | null>(null);
  const half = () => props.house.half(`cupboard ${props.ask} ${props.of} ${props.unit}`);
  const will = (): boolean => {
    const n = typed();
    return n === null ? props.blank : n >= props.least && n <= props.most;
  };
  return (
    <CupboardPage
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
              hint: props.hint,
              outside: fill(cupboard.only, {
                least: props.least,
                most: props.most,
                unit: props.unit,
              }),
              again: keypad.again,
            }}
            half={half()}
            min={props.least}
            max={props.most}
            onTyped={setTyped}
          />
        </Words>
      }
      slab={
        <Slab
          label={bench.thatsIt}
          then={props.then}
          fresh={`${props.ask} ${props.unit}`}
          disabled={!will()}
          onPress={() => {
            half().keep('');
            props.onTake(typed());
          }}
        />
      }
      controls={
        <>
          <Control label={props.back} onPress={() => props.onBack()} />
          {props.beside}
        </>
      }
    />
  );
}
