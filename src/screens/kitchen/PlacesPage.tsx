import { createSignal, For, Show, type JSX } from 'solid-js';
import { ANY_POT, LIMITS, POT_MATERIALS, type PotMaterial } from '../../core/kitchen/equipment.ts';
import { placesFor, takesHeat } from '../../core/kitchen/places.ts';
import { heed } from '../../core/speech/en/heed.ts';
import { kitchenPage } from '../../core/speech/en/kitchen-page.ts';
import { start } from '../../core/speech/en/start.ts';
import { fill } from '../../core/speech/fill.ts';
import { Control } from '../../parts/Control.tsx';
import { Stepper } from '../../parts/Stepper.tsx';
import { Tiles } from '../../parts/Tiles.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { Page } from './Page.tsx';

/** How many loaves one load takes, and what the pots are made of. */
export function PlacesPage(props: {
  readonly house: House;
  readonly onBack: () => void;
}): JSX.Element {
  const [face, setFace] = createSignal<'counts' | 'pots' | number>('counts');
  const equipment = () => props.house.equipment();
  const potAt = () => {
    const at = face();
    return typeof at === 'number' ? at : null;
  };
  const setPots = (count: number): void => {
    const pots = Array.from({ length: count }, (_, i) => equipment().pots[i] ?? ANY_POT);
    props.house.equip({ pots });
  };
  const setMaterial = (at: number, material: PotMaterial): void => {
    const pots = equipment().pots.map((pot, i) => (i === at ? { ...pot, material } : pot));
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
    if (!takesHeat(pot)) return care['clayOrGlass'];
    return pot.material === 'enamel' ? care['metalKnob'] : undefined;
  };
  return (
    <Show
      when={face() !== 'counts'}
      fallback={
        <Page
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
      }
    >
      <Page
        back={potAt() === null ? kitchenPage.places : kitchenPage.made}
        onBack={() => setFace(potAt() === null ? 'counts' : 'pots')}
        words={
          <Show
            when={potAt() !== null}
            fallback={
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
          >
            <Words
              headline={fill(kitchenPage.pot, { count: (potAt() ?? 0) + 1 })}
              care={careOf(potAt() ?? 0)}
            >
              <Tiles
                label={kitchenPage.made}
                options={POT_MATERIALS.map((value) => ({
                  value,
                  label: kitchenPage.materials[value],
                }))}
                chosen={equipment().pots[potAt() ?? 0]?.material ?? ''}
                onChoose={(value) => setMaterial(potAt() ?? 0, value as PotMaterial)}
              />
            </Words>
          </Show>
        }
      />
    </Show>
  );
}
