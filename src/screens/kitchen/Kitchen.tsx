import { createSignal, Match, Switch, type JSX } from 'solid-js';
import { SCALE_STEPS, type ScaleStep } from '../../core/kitchen/equipment.ts';
import { FRIDGE_MOST } from '../../core/kitchen/limits.ts';
import { handKilos } from '../../core/kitchen/bowls.ts';
import { placesFor } from '../../core/kitchen/places.ts';
import { bench } from '../../core/speech/words/bench.ts';
import { kitchenFields as words } from '../../core/speech/words/kitchen-fields.ts';
import { kitchenPage } from '../../core/speech/words/kitchen-page.ts';
import { starterWords } from '../../core/speech/words/starter.ts';
import { start } from '../../core/speech/words/start.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { showHeat, showHeats } from '../../core/speech/heats.ts';
import { Control } from '../../parts/Control.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { KitchenPage } from '../KitchenPage.tsx';
import { bowlFields, fridgeFields, ovenDetail, ovenFields } from './fields.ts';
import { ChoicePage, FieldsPage } from './FieldsPage.tsx';
import { PlacesPage } from './PlacesPage.tsx';
import { StarterPage } from './StarterPage.tsx';
import { TabletPages } from './TabletPages.tsx';

type Face = 'grid' | 'tablet' | 'oven' | 'places' | 'fridge' | 'bowls' | 'scale' | 'starter';

/** Steps wider than this make salt and starter a guess, g. Judgement: half of 1 g is 5 % of 10 g. */
const FINE: ScaleStep = 1;

/** What the kitchen bakes with, and on a second page the tablet itself. */
export default function Kitchen(props: {
  readonly house: House;
  /** Whether its slab leads back to a bench, not to the start. */
  readonly fromBench: boolean;
  readonly onHome: () => void;
}): JSX.Element {
  const [face, setFace] = createSignal<Face>('grid');
  const equipment = () => props.house.equipment();
  const units = () => props.house.ways();
  const toGrid = (): void => void setFace('grid');
  const heat = (celsius: number | null): string =>
    celsius === null ? kitchenPage.notSaid : showHeat(celsius, units());
  const bowls = (): string => {
    const { count } = equipment().bowls;
    return count === null ? kitchenPage.notSaid : `${count} ${words.units.bowls}`;
  };
  const scale = (): string => {
    const step = equipment().scale;
    return step === null ? kitchenPage.notSaid : `${step} g`;
  };
  const starter = (): string => {
    const { put } = props.house.kitchen().starter;
    return put === undefined ? kitchenPage.notSaid : starterWords.places[put.where];
  };
  const to = (label: string, value: string | undefined, next: Face): JSX.Element => (
    <Control label={label} value={value} onPress={() => setFace(next)} />
  );
  return (
    <Switch>
      <Match when={face() === 'grid'}>
        <KitchenPage
          back={props.fromBench ? bench.label : start.title}
          onBack={() => props.onHome()}
          words={
            <Words headline={kitchenPage.title}>
              <div class="kitchen-grid">
                {to(words.oven.title, heat(equipment().oven.most), 'oven')}
                {to(
                  kitchenPage.places,
                  fill(kitchenPage.placesValue, { count: placesFor(equipment(), 'pot') }),
                  'places',
                )}
                {to(words.fridge.title, heat(equipment().fridge.celsius), 'fridge')}
                {to(words.bowls.title, bowls(), 'bowls')}
                {to(words.scale.title, scale(), 'scale')}
                {to(
                  words.tablet,
                  equipment().sound === null ? words.soundFirst : undefined,
                  'tablet',
                )}
              </div>
            </Words>
          }
          controls={to(starterWords.title, starter(), 'starter')}
        />
      </Match>
      <Match when={face() === 'tablet'}>
        <TabletPages house={props.house} onBack={toGrid} />
      </Match>
      <Match when={face() === 'oven'}>
        <FieldsPage
          title={words.oven.title}
          detail={ovenDetail(props.house)}
          fields={ovenFields(props.house)}
          half={(question) => props.house.half(question)}
          back={kitchenPage.title}
          onBack={toGrid}
        />
      </Match>
      <Match when={face() === 'places'}>
        <PlacesPage house={props.house} onBack={toGrid} />
      </Match>
      <Match when={face() === 'fridge'}>
        <FieldsPage
          title={words.fridge.title}
          care={
            (equipment().fridge.celsius ?? 0) > FRIDGE_MOST
              ? fill(words.fridge.warm, showHeats(units()))
              : undefined
          }
          fields={fridgeFields(props.house)}
          half={(question) => props.house.half(question)}
          back={kitchenPage.title}
          onBack={toGrid}
        />
      </Match>
      <Match when={face() === 'bowls'}>
        <FieldsPage
          title={words.bowls.title}
          detail={fill(
            words.bowls.detail,
            shown({ grams: handKilos(equipment().bowls) * 1000 }, units()),
          )}
          fields={bowlFields(props.house)}
          half={(question) => props.house.half(question)}
          back={kitchenPage.title}
          onBack={toGrid}
        />
      </Match>
      <Match when={face() === 'scale'}>
        <ChoicePage
          field={{
            kind: 'choice',
            label: words.scale.title,
            ask: words.scale.ask,
            value: scale(),
            chosen: String(equipment().scale ?? ''),
            options: SCALE_STEPS.map((step) => ({ value: String(step), label: `${step} g` })),
            set: (value) => props.house.equip({ scale: Number(value) as ScaleStep }),
          }}
          detail={words.scale.detail}
          care={(equipment().scale ?? 0) > FINE ? words.scale.coarse : undefined}
          back={kitchenPage.title}
          onBack={toGrid}
        />
      </Match>
      <Match when={face() === 'starter'}>
        <StarterPage house={props.house} onBack={toGrid} />
      </Match>
    </Switch>
  );
}
