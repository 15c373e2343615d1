import { type JSX } from 'solid-js';
import { bench } from '../../core/speech/en/bench.ts';
import { keypad } from '../../core/speech/en/controls.ts';
import { trouble } from '../../core/speech/en/trouble.ts';
import { fill } from '../../core/speech/fill.ts';
import { Control } from '../../parts/Control.tsx';
import { NumberPad } from '../../parts/NumberPad.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import type { BenchView } from './view.ts';

/** A reading being keyed in. `odd`: it was outside what is usual and was asked again. */
export interface Pad {
  readonly what: 'doughTemperature' | 'firstPiece';
  readonly typed: number | null;
  readonly odd: boolean;
}

/** What is usual; outside it a reading is asked again, then kept. Practice. */
const USUAL = {
  doughTemperature: { least: 10, most: 35, unit: '°C' },
  firstPiece: { least: 150, most: 2500, unit: 'g' },
} as const;

const isOdd = ({ what, typed }: Pad): boolean =>
  typed !== null && (typed < USUAL[what].least || typed > USUAL[what].most);

interface Keyed {
  readonly pad: Pad;
  readonly view: BenchView;
  readonly onChange: (pad: Pad | null) => void;
}

export function PadWords(props: Keyed): JSX.Element {
  const usual = () => USUAL[props.pad.what];
  const again = (): string =>
    props.pad.what === 'firstPiece'
      ? fill(trouble.weightOdd, { grams: props.pad.typed ?? '' })
      : fill(trouble.temperatureOdd, { celsius: props.pad.typed ?? '' });
  const hint = (): string =>
    fill(props.pad.what === 'firstPiece' ? bench.pieceRange : bench.doughRange, {
      least: usual().least,
      most: usual().most,
    });
  return (
    <Words headline={keypad[props.pad.what]}>
      <NumberPad
        label={keypad[props.pad.what]}
        unit={usual().unit}
        words={{
          point: bench.point,
          clear: keypad.clear,
          hint: hint(),
          outside: props.pad.odd ? again() : hint(),
        }}
        min={usual().least}
        max={usual().most}
        onTyped={(typed) => props.onChange({ what: props.pad.what, typed, odd: false })}
      />
    </Words>
  );
}

export function PadSlab(
  props: Keyed & { readonly house: House; readonly bake: string },
): JSX.Element {
  const press = (): void => {
    const { what, typed, odd } = props.pad;
    if (typed === null) return;
    if (isOdd(props.pad) && !odd) return props.onChange({ what, typed, odd: true });
    const reading =
      what === 'firstPiece'
        ? ({ what, grams: typed } as const)
        : ({ what, celsius: typed } as const);
    void props.house
      .take({ kind: 'reading', by: 'hand', bake: props.bake, reading })
      .then(() => props.onChange(null));
  };
  return (
    <Slab
      label={bench.thatsIt}
      then={
        props.pad.typed === null ? bench.key : `${props.pad.typed} ${USUAL[props.pad.what].unit}`
      }
      fresh={`pad ${props.pad.odd}`}
      disabled={props.pad.typed === null}
      onPress={press}
    />
  );
}

export function PadControls(props: { readonly onClose: () => void }): JSX.Element {
  return <Control label={bench.close} onPress={() => props.onClose()} />;
}
