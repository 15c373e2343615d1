import { type JSX } from 'solid-js';
import { bench } from '../../core/speech/en/bench.ts';
import { keypad } from '../../core/speech/en/controls.ts';
import { trouble } from '../../core/speech/en/trouble.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { showHeat } from '../../core/speech/heats.ts';
import { keyedHeat, keyedWeight, type Keyed as Keys } from '../../core/speech/keyed.ts';
import { showWeight } from '../../core/speech/weights.ts';
import type { Units } from '../../core/units.ts';
import { Control } from '../../parts/Control.tsx';
import { NumberPad } from '../../parts/NumberPad.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import type { BenchView } from './view.ts';

/** A reading being keyed in, in the baker's unit. `odd`: it was unusual and was asked again. */
export interface Pad {
  readonly what: 'doughTemperature' | 'firstPiece';
  readonly typed: number | null;
  readonly odd: boolean;
}

/** What is usual, °C and g; outside it a reading is asked again, then kept. Practice. */
const DOUGH = { least: 10, most: 35 } as const;
const PIECE = { least: 150, most: 2500 } as const;

const keysOf = (what: Pad['what'], units: Units): Keys =>
  what === 'firstPiece' ? keyedWeight(PIECE, units) : keyedHeat(DOUGH, units);

const isUsual = (typed: number, { least, most }: Keys): boolean => typed >= least && typed <= most;

/** A number that is usual in the other scale was most likely read off such a probe. */
const askAgain = (what: Pad['what'], typed: number, units: Units): string => {
  const value = keysOf(what, units).record(typed);
  if (what === 'firstPiece') return fill(trouble.weightOdd, shown({ grams: value }, units));
  const other = keyedHeat(DOUGH, { ...units, heat: units.heat === 'C' ? 'F' : 'C' });
  return isUsual(typed, other)
    ? fill(trouble.temperatureOther, { ...shown({ celsius: value }, units), unit: other.unit })
    : fill(trouble.temperatureOdd, shown({ celsius: value }, units));
};

interface Keyed {
  readonly house: House;
  readonly pad: Pad;
  readonly onChange: (pad: Pad | null) => void;
}

export function PadWords(props: Keyed): JSX.Element {
  const units = (): Units => props.house.ways();
  const keys = (): Keys => keysOf(props.pad.what, units());
  const label = (): string => fill(keypad[props.pad.what], { unit: keys().unit });
  const hint = (): string => fill(bench.usual, { range: keys().range });
  return (
    <Words headline={label()}>
      <NumberPad
        label={label()}
        unit={keys().unit}
        words={{
          point: bench.point,
          clear: keypad.clear,
          hint: hint(),
          outside:
            props.pad.odd && props.pad.typed !== null
              ? askAgain(props.pad.what, props.pad.typed, units())
              : hint(),
        }}
        min={keys().least}
        max={keys().most}
        onTyped={(typed) => props.onChange({ what: props.pad.what, typed, odd: false })}
      />
    </Words>
  );
}

export function PadSlab(
  props: Keyed & { readonly view: BenchView; readonly bake: string },
): JSX.Element {
  const units = (): Units => props.house.ways();
  const keys = (): Keys => keysOf(props.pad.what, units());
  const press = (): void => {
    const { what, typed, odd } = props.pad;
    if (typed === null) return;
    if (!isUsual(typed, keys()) && !odd) return props.onChange({ what, typed, odd: true });
    const value = keys().record(typed);
    const reading =
      what === 'firstPiece'
        ? ({ what, grams: value } as const)
        : ({ what, celsius: value } as const);
    void props.house
      .take({ kind: 'reading', by: 'hand', bake: props.bake, reading })
      .then(() => props.onChange(null));
  };
  /** What will be noted, as the scale or the probe shows it. */
  const noted = (): string => {
    if (props.pad.typed === null) return bench.key;
    const value = keys().record(props.pad.typed);
    return props.pad.what === 'firstPiece' ? showWeight(value, units()) : showHeat(value, units());
  };
  return (
    <Slab
      label={bench.thatsIt}
      then={noted()}
      fresh={`pad ${props.pad.odd}`}
      disabled={props.pad.typed === null}
      onPress={press}
    />
  );
}

export function PadControls(props: { readonly onClose: () => void }): JSX.Element {
  return <Control label={bench.close} onPress={() => props.onClose()} />;
}
