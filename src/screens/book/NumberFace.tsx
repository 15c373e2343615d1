import { createSignal, type JSX } from 'solid-js';
import { bookLines } from '../../core/speech/words/book.ts';
import { bench } from '../../core/speech/words/bench.ts';
import { keypad } from '../../core/speech/words/controls.ts';
import { fill } from '../../core/speech/fill.ts';
import { NumberPad } from '../../parts/NumberPad.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { BookPage } from './BookPage.tsx';

/**
 * A number keyed in, blank at first: what stands now is told beside it. `tell` says what a typed number
 * comes to, or null where it will not do.
 */
export function NumberFace(props: {
  readonly house: House;
  readonly ask: string;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  /** What it is now. */
  readonly now: string;
  readonly tell?: (typed: number) => string | null;
  readonly back: string;
  /** A typed number that will do. */
  readonly onTake: (typed: number) => void;
  readonly onBack: () => void;
  readonly controls?: JSX.Element;
}): JSX.Element {
  const [typed, setTyped] = createSignal<number | null>(null);
  const half = () => props.house.half(`book ${props.ask} ${props.unit}`);
  const inside = (n: number): boolean => n >= props.least && n <= props.most;
  const will = (): boolean => {
    const n = typed();
    return n !== null && inside(n) && (props.tell === undefined || props.tell(n) !== null);
  };
  const hint = (): string => {
    const n = typed();
    if (n === null || !inside(n)) return props.now;
    return props.tell ? (props.tell(n) ?? bookLines.cannot) : props.now;
  };
  return (
    <BookPage
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
              hint: hint(),
              outside: fill(bookLines.only, {
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
          then={props.back}
          fresh={`${props.ask} ${props.unit}`}
          disabled={typed() !== null && !will()}
          onPress={() => {
            const n = typed();
            half().keep('');
            if (n !== null) props.onTake(n);
            props.onBack();
          }}
        />
      }
      controls={props.controls}
    />
  );
}
