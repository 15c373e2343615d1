import { createSignal, For, Match, Switch, type JSX } from 'solid-js';
import { placesFor } from '../../core/kitchen/places.ts';
import { kitchenPage } from '../../core/speech/en/kitchen-page.ts';
import { soundCheck } from '../../core/speech/en/kitchen.ts';
import { start } from '../../core/speech/en/start.ts';
import { saveAsFile } from '../../core/speech/en/trouble.ts';
import { fill } from '../../core/speech/fill.ts';
import { Control } from '../../parts/Control.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { Page } from './Page.tsx';
import { PlacesPage } from './PlacesPage.tsx';
import { SoundPage } from './SoundPage.tsx';

/** What the kitchen bakes with, whether its calls are heard, and the way to a copy of the log. */
export default function Kitchen(props: {
  readonly house: House;
  readonly onHome: () => void;
}): JSX.Element {
  const [page, setPage] = createSignal<'grid' | 'places' | 'sound' | 'promise'>('grid');
  const equipment = () => props.house.equipment();
  const back = () => setPage('grid');
  const heard = (): string => {
    const { sound } = equipment();
    if (sound === null) return soundCheck.notDone;
    return fill(soundCheck.result, {
      name: soundCheck.results[sound.heard],
      date: props.house.date(sound.at),
    });
  };
  const saved = (): string => {
    const { savedAt } = equipment();
    return savedAt === null
      ? kitchenPage.neverSaved
      : fill(kitchenPage.saved, { date: props.house.date(savedAt) });
  };
  return (
    <Switch>
      <Match when={page() === 'grid'}>
        <Page
          back={start.title}
          onBack={() => props.onHome()}
          words={
            <Words headline={kitchenPage.title}>
              <div class="kitchen-grid">
                <Control
                  label={kitchenPage.places}
                  value={fill(kitchenPage.placesValue, { count: placesFor(equipment(), 'pot') })}
                  onPress={() => setPage('places')}
                />
                <Control
                  label={soundCheck.title}
                  value={heard()}
                  onPress={() => setPage('sound')}
                />
                <Control
                  label={saveAsFile}
                  value={saved()}
                  onPress={() => props.house.saveAsFile()}
                />
                <Control label={kitchenPage.promiseTitle} onPress={() => setPage('promise')} />
              </div>
            </Words>
          }
        />
      </Match>
      <Match when={page() === 'places'}>
        <PlacesPage house={props.house} onBack={back} />
      </Match>
      <Match when={page() === 'sound'}>
        <SoundPage house={props.house} onBack={back} />
      </Match>
      <Match when={page() === 'promise'}>
        <Page
          back={kitchenPage.title}
          onBack={back}
          words={
            <Words headline={kitchenPage.promiseTitle}>
              <ul class="kitchen-told">
                <For each={kitchenPage.promise}>{(line) => <li class="act-detail">{line}</li>}</For>
              </ul>
            </Words>
          }
        />
      </Match>
    </Switch>
  );
}
