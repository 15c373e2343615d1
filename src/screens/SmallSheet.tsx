import { For, Show, type JSX } from 'solid-js';
import { AGES } from '../core/small/ages.ts';
import { bench } from '../core/speech/words/bench.ts';
import { handMark, small, smallAges } from '../core/speech/words/small.ts';
import { Control } from '../parts/Control.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import type { House } from './house.ts';
import { MarkTiles } from './MarkTiles.tsx';
import { forgetLeft } from './way-back.ts';
import './SmallSheet.css';

/** Whose hands help: three ages, the baker's view, and the marks of the children here. */
export default function SmallSheet(props: {
  readonly house: House;
  /** A view was chosen. */
  readonly onChosen: () => void;
  readonly onClose: () => void;
}): JSX.Element {
  const turn = (to: 'off' | (typeof AGES)[number]): void => {
    forgetLeft(props.house);
    props.house.choose({ small: to });
    props.onChosen();
  };
  return (
    <Sheet title={small.whose}>
      <div class="small-ages" role="group" aria-label={small.title}>
        <For each={AGES}>
          {(ages) => (
            <Control
              label={smallAges[ages]}
              strong
              chosen={props.house.ways().small === ages}
              onPress={() => turn(ages)}
            />
          )}
        </For>
      </div>
      <section>
        <h2 class="sheet-part">{handMark.title}</h2>
        <p>{handMark.detail}</p>
      </section>
      <MarkTiles house={props.house} />
      <div class="sheet-grid">
        <Show when={props.house.ways().small !== 'off'}>
          <Control label={small.back} onPress={() => turn('off')} />
        </Show>
        <Control label={bench.close} onPress={() => props.onClose()} />
      </div>
    </Sheet>
  );
}
