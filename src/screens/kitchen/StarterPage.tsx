import { createSignal, Match, Show, Switch, type JSX } from 'solid-js';
import { takeBackTarget } from '../../../machines/kitchen/take-back.ts';
import { STARTER_PLACES, type StarterDeed } from '../../core/records/starter.ts';
import { controls } from '../../core/speech/words/controls.ts';
import { kitchenPage } from '../../core/speech/words/kitchen-page.ts';
import { starterWords as words } from '../../core/speech/words/starter.ts';
import { keyedWeight } from '../../core/speech/keyed.ts';
import { showWeight } from '../../core/speech/weights.ts';
import { Control } from '../../parts/Control.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { KitchenPage } from '../KitchenPage.tsx';
import { nightOf } from '../night-of.ts';
import { careOfStarter, fedText, speedOf, starterName, stateOf } from '../starter-view.ts';
import { ChoicePage, NumberPage } from './FieldsPage.tsx';
import { StarterFeedPage } from './StarterFeedPage.tsx';
import { StarterStrong } from './StarterStrong.tsx';
import { StarterSpeed } from './StarterSpeed.tsx';

type Face = 'grid' | 'feed' | 'where' | 'kept' | 'name' | 'speed' | 'strong';

/** What is kept back of a levain is grams, not kilos. Judgement. */
const KEPT = { least: 5, most: 2000 } as const;

/** The starter between bakes: each thing that is known of it behind its own press. */
export function StarterPage(props: {
  readonly house: House;
  readonly onBack: () => void;
}): JSX.Element {
  const [face, setFace] = createSignal<Face>('grid');
  const starter = () => props.house.kitchen().starter;
  const toGrid = (): void => void setFace('grid');
  const tend = (deed: StarterDeed): void => void props.house.take({ kind: 'starter', ...deed });
  const units = () => props.house.ways();
  // What it shows is asked anew, the press itself stays: one made anew each second would never arm.
  const cell = (
    label: string,
    value: () => string | null | undefined,
    to: Face,
    unsaid: string = kitchenPage.notSaid,
  ): JSX.Element => (
    <Control
      label={label}
      value={value() ?? unsaid}
      disabled={!props.house.holds}
      onPress={() => setFace(to)}
    />
  );
  const place = () => starter().put && words.places[starter().put!.where];
  const kept = () => starter().kept && showWeight(starter().kept!.grams, units());
  const mayTakeBack = (): boolean =>
    props.house.holds && takeBackTarget(props.house.kitchen())?.kind === 'starter';
  return (
    <Switch>
      <Match when={face() === 'grid'}>
        <KitchenPage
          back={kitchenPage.title}
          onBack={() => props.onBack()}
          words={
            <Words
              headline={starterName(starter())}
              detail={stateOf(props.house)}
              care={careOfStarter(starter(), props.house.now())}
            >
              <div class="kitchen-grid">
                {cell(words.feed, () => fedText(props.house), 'feed')}
                {cell(words.where, place, 'where')}
                {cell(words.kept, kept, 'kept')}
                {cell(
                  words.speed,
                  () => speedOf(props.house.kitchen(), props.house.now()).value,
                  'speed',
                  words.speedUnknown,
                )}
              </div>
            </Words>
          }
          controls={
            <>
              <Show when={mayTakeBack()}>
                <Control
                  label={controls.takeBack}
                  does="takeBack"
                  onPress={() => void props.house.takeBack()}
                />
              </Show>
              <Control label={words.strongPress} onPress={() => setFace('strong')} />
              {cell(words.name, () => starter().name && starterName(starter()), 'name')}
            </>
          }
        />
      </Match>
      <Match when={face() === 'feed'}>
        <StarterFeedPage house={props.house} onBack={toGrid} />
      </Match>
      <Match when={face() === 'where'}>
        <ChoicePage
          field={{
            kind: 'choice',
            label: words.where,
            ask: words.whereAsk,
            value: place() ?? null,
            chosen: starter().put?.where ?? '',
            options: STARTER_PLACES.map((value) => ({ value, label: words.places[value] })),
            set(value) {
              const where = STARTER_PLACES.find((one) => one === value);
              if (where && where !== starter().put?.where) {
                tend({ did: 'put', where, ...nightOf(props.house) });
              }
              toGrid();
            },
          }}
          care={words.loose}
          back={starterName(starter())}
          onBack={toGrid}
        />
      </Match>
      <Match when={face() === 'kept'}>
        <NumberPage
          field={{
            kind: 'number',
            label: words.kept,
            ask: words.keptAsk,
            value: kept() ?? null,
            keyed: keyedWeight(KEPT, units()),
            whole: false,
            set: (grams) => grams !== null && tend({ did: 'kept', grams }),
          }}
          half={props.house.half(words.kept)}
          back={starterName(starter())}
          onBack={toGrid}
        />
      </Match>
      <Match when={face() === 'name'}>
        <ChoicePage
          field={{
            kind: 'choice',
            label: words.name,
            ask: words.nameAsk,
            value: starter().name ?? null,
            chosen: starter().name ?? '',
            options: Object.entries(words.names).map(([value, label]) => ({ value, label })),
            set(name) {
              tend({ did: 'named', name });
              toGrid();
            },
          }}
          back={starterName(starter())}
          onBack={toGrid}
        />
      </Match>
      <Match when={face() === 'strong'}>
        <StarterStrong house={props.house} onBack={toGrid} />
      </Match>
      <Match when={face() === 'speed'}>
        <StarterSpeed house={props.house} onBack={toGrid} />
      </Match>
    </Switch>
  );
}
