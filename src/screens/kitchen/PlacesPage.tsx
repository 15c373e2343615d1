import { createSignal, For, Match, Show, Switch, type JSX } from 'solid-js';
import { ANY_POT } from '../../core/kitchen/equipment.ts';
import { LIMITS } from '../../core/kitchen/limits.ts';
import { placesFor, takesHeat } from '../../core/kitchen/places.ts';
import { heed } from '../../core/speech/words/heed.ts';
import { kitchenPage } from '../../core/speech/words/kitchen-page.ts';
import { start } from '../../core/speech/words/start.ts';
import { fill } from '../../core/speech/fill.ts';
import { Control } from '../../parts/Control.tsx';
import { Stepper } from '../../parts/Stepper.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { KitchenPage } from '../KitchenPage.tsx';
import { potFields } from './fields.ts';
import { FieldsPage } from './FieldsPage.tsx';

/** How many loaves one load takes, and what is known of each pot. */
export function PlacesPage(props: {
  readonly house: House;
  readonly onBack: () => void;
}): JSX.Element {
  const [face, setFace] = createSignal<'counts' | 'pots' | number>('counts');
  const equipment = () => props.house.equipment();
  const potAt = (): number => {
    const at = face();
    return typeof at === 'number' ? at : 0;
  };
  const setPots = (count: number): void => {
    const pots = Array.from({ length: count }, (_, i) => equipment().pots[i] ?? ANY_POT);
    props.house.equip({ pots });
  };
  const row = (
    label: string,
    value: number,
    limits: { readonly least: number; readonly most: number },
    onChange: (value: number) => void,
  ): JSX.Element => (
    <div class="kitchen-row">
      <span>{label}</span>
      <Stepper
        label={label}
        value={value}
        {...limits}
        fewer={`${start.fewer}: ${label}`}
        more={`${start.more}: ${label}`}
        onChange={onChange}
      />
    </div>
  );
  const careOf = (at: number): string | undefined => {
    const pot = equipment().pots[at] ?? ANY_POT;
    const care = heed.beforeStart['pot'] ?? {};
    if (pot.knob === 'plastic') return care['plasticKnob'];
    if (!takesHeat(pot)) return care['clayOrGlass'];
    return pot.material === 'enamel' && pot.cold === null ? care['metalKnob'] : undefined;
  };
  return (
    <Switch>
      <Match when={face() === 'counts'}>
        <KitchenPage
          back={kitchenPage.title}
          onBack={() => props.onBack()}
          words={
            <Words
              headline={kitchenPage.placesDetail}
              care={placesFor(equipment(), 'pot') === 0 ? kitchenPage.notHot : undefined}
            >
              <div class="kitchen-rows">
                {row(kitchenPage.pots, equipment().pots.length, LIMITS.pots, setPots)}
                {row(kitchenPage.tins, equipment().tins, LIMITS.tins, (tins) =>
                  props.house.equip({ tins }),
                )}
                {row(kitchenPage.stones, equipment().stones, LIMITS.stones, (stones) =>
                  props.house.equip({ stones }),
                )}
              </div>
            </Words>
          }
          controls={<Control label={kitchenPage.made} onPress={() => setFace('pots')} />}
        />
      </Match>
      <Match when={face() === 'pots'}>
        <KitchenPage
          back={kitchenPage.places}
          onBack={() => setFace('counts')}
          words={
            <Words headline={kitchenPage.made}>
              <div class="kitchen-grid">
                <For each={equipment().pots}>
                  {({ material }, i) => (
                    <Control
                      label={fill(kitchenPage.pot, { count: i() + 1 })}
                      value={material ? kitchenPage.materials[material] : kitchenPage.notSaid}
                      onPress={() => setFace(i())}
                    />
                  )}
                </For>
              </div>
            </Words>
          }
        />
      </Match>
      <Match when={typeof face() === 'number'}>
        <Show when={fill(kitchenPage.pot, { count: potAt() + 1 })}>
          {(title) => (
            <FieldsPage
              title={title()}
              care={careOf(potAt())}
              fields={potFields(props.house, potAt())}
              half={(question) => props.house.half(question)}
              back={kitchenPage.made}
              onBack={() => setFace('pots')}
            />
          )}
        </Show>
      </Match>
    </Switch>
  );
}
