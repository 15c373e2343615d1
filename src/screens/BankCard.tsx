import { createSignal, onMount, type JSX } from 'solid-js';
import { bench } from '../core/speech/words/bench.ts';
import { bankCard as words } from '../core/speech/words/ways.ts';
import { Control } from '../parts/Control.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { PX_PER_MM, type House } from './house.ts';
import './BankCard.css';

/** CSS pixels a millimetre: a centimetre of card at a press, and a hair of it. */
const COARSE = 0.2;
const FINE = 0.02;

const held = (pxPerMm: number): number =>
  Math.min(PX_PER_MM.most, Math.max(PX_PER_MM.least, Math.round(pxPerMm * 100) / 100));

/** A frame that is pressed to the size of a bank card; from it follows what a millimetre is here. */
export default function BankCard(props: {
  readonly house: House;
  readonly onClose: () => void;
}): JSX.Element {
  let root!: HTMLDivElement;
  const [scale, setScale] = createSignal<number>(PX_PER_MM.least);
  // What stands now, whether a card or the window's size said so.
  onMount(() =>
    setScale(held(Number(getComputedStyle(root).getPropertyValue('--px-per-mm')) || 0)),
  );
  const step = (by: number, label: string): JSX.Element => (
    <Control
      label={label}
      disabled={held(scale() + by) === scale()}
      onPress={() => setScale((old) => held(old + by))}
    />
  );
  const choose = (pxPerMm: number | null): void => {
    props.house.choose({ pxPerMm });
    props.onClose();
  };
  return (
    <Sheet title={words.title}>
      <p>{words.detail}</p>
      <div class="card-page" ref={root}>
        <div
          class="card-frame"
          role="img"
          aria-label={words.frame}
          style={{ '--trial': `${scale()}` }}
        />
        <div class="card-controls">
          {step(-COARSE, words.smaller)}
          {step(COARSE, words.bigger)}
          {step(-FINE, words.bitSmaller)}
          {step(FINE, words.bitBigger)}
          <Control label={words.save} onPress={() => choose(scale())} />
          <Control label={words.usual} onPress={() => choose(null)} />
          <Control label={bench.close} onPress={() => props.onClose()} />
        </div>
      </div>
    </Sheet>
  );
}
