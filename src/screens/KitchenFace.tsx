import type { JSX } from 'solid-js';
import { bench } from '../core/speech/words/bench.ts';
import { keypad } from '../core/speech/words/controls.ts';
import { start } from '../core/speech/words/start.ts';
import { shown } from '../core/speech/facts.ts';
import { fill } from '../core/speech/fill.ts';
import { keyedHeat } from '../core/speech/keyed.ts';
import type { Units } from '../core/units.ts';
import type { Half } from '../parts/half.ts';
import { NumberPad } from '../parts/NumberPad.tsx';
import { Words } from '../parts/Words.tsx';
import { KITCHEN } from './kitchen-range.ts';

/** How warm the kitchen is, keyed in; what was measured last is told beside it and never filled in. */
export function KitchenFace(props: {
  readonly last: number | null;
  readonly units: Units;
  readonly half: Half;
  readonly onTyped: (celsius: number | null) => void;
}): JSX.Element {
  const keyed = () => keyedHeat(KITCHEN, props.units);
  const label = (): string => fill(keypad.kitchenTemperature, { unit: keyed().unit });
  return (
    <Words headline={label()}>
      <NumberPad
        label={label()}
        unit={keyed().unit}
        words={{
          point: bench.point,
          clear: keypad.clear,
          hint:
            props.last === null
              ? fill(bench.usual, { range: keyed().range })
              : fill(start.kitchenLast, shown({ celsius: props.last }, props.units)),
          outside: fill(bench.only, { range: keyed().range }),
          again: keypad.again,
        }}
        half={props.half}
        min={keyed().least}
        max={keyed().most}
        onTyped={(typed) => props.onTyped(typed === null ? null : keyed().record(typed))}
      />
    </Words>
  );
}
