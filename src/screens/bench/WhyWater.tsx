import { createMemo, For, Show, type JSX } from 'solid-js';
import { stageOf } from '../../../machines/kitchen/stage-of.ts';
import { controls } from '../../core/speech/words/controls.ts';
import { Control } from '../../parts/Control.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { unbroken } from '../../parts/unbroken.ts';
import { focusOn } from '../focus.ts';
import type { House } from '../house.ts';
import { numberPage, type ReadingPage } from './readings/page.ts';
import { pouredNext } from './water-view.ts';
import { whyOf } from './why-water.ts';
import './WhyWater.css';

/** What the water's temperature rests on, and the way to a reading of it. */
export default function WhyWater(props: {
  readonly house: House;
  readonly bake: string;
  readonly onTurn: (page: ReadingPage | null) => void;
}): JSX.Element {
  const why = createMemo(() => {
    const focus = focusOn(props.house.kitchen(), props.bake);
    const poured = focus && pouredNext(props.house.kitchen(), focus, stageOf(focus.machine));
    return poured && whyOf(poured, props.house.ways());
  });
  return (
    <Show when={why()}>
      {(shown) => (
        <Sheet title={shown().title}>
          <div class="why">
            <dl class="why-rows">
              <For each={shown().rows}>
                {({ name, value }) => (
                  <div>
                    <dt>{name}</dt>
                    <dd>{unbroken(value)}</dd>
                  </div>
                )}
              </For>
            </dl>
            <ul class="why-words">
              <For each={shown().words}>{(text) => <li>{unbroken(text)}</li>}</For>
            </ul>
          </div>
          <div class="sheet-grid">
            <Control label={controls.backToBench} onPress={() => props.onTurn(null)} />
            <Show when={shown().change}>
              {(change) => (
                <Control
                  label={change()}
                  disabled={!props.house.holds}
                  onPress={() => props.onTurn(numberPage('wantedDough'))}
                />
              )}
            </Show>
            <Control label={controls.newReading} onPress={() => props.onTurn({ at: 'new' })} />
          </div>
        </Sheet>
      )}
    </Show>
  );
}
