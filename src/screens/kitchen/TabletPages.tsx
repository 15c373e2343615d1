import { createSignal, For, lazy, Match, Suspense, Switch, type JSX } from 'solid-js';
import { bench } from '../../core/speech/words/bench.ts';
import { earKitchen } from '../../core/speech/words/ear-kitchen.ts';
import { kitchenFields as words } from '../../core/speech/words/kitchen-fields.ts';
import { kitchenPage } from '../../core/speech/words/kitchen-page.ts';
import { pedal } from '../../core/speech/words/pedal.ts';
import { readAFile } from '../../core/speech/words/read-a-file.ts';
import { soundCheck } from '../../core/speech/words/sound-check.ts';
import { troubleLines } from '../../core/speech/words/trouble.ts';
import { voiceWords } from '../../core/speech/words/voice.ts';
import { Control } from '../../parts/Control.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { KitchenPage } from '../KitchenPage.tsx';
import SoundPage from '../SoundPage.tsx';
import { WaysControls } from '../WaysControls.tsx';
import { nightFields } from './fields.ts';
import { FieldsPage } from './FieldsPage.tsx';
import { FilePage } from './FilePage.tsx';
import { PedalPage } from './PedalPage.tsx';
import { SavePage } from './SavePage.tsx';
import { tabletValues } from './tablet-values.ts';
import { VoicePage } from './VoicePage.tsx';

const EarPages = lazy(() => import('./ear/EarPages.tsx'));

type Face = 'tablet' | 'night' | 'sound' | 'voice' | 'pedal' | 'ear' | 'file' | 'save' | 'promise';

/** The tablet itself: how it is heard and seen, what it hears, and what is saved of it. */
export function TabletPages(props: {
  readonly house: House;
  readonly onBack: () => void;
}): JSX.Element {
  const [face, setFace] = createSignal<Face>('tablet');
  const tablet = () => tabletValues(props.house);
  const toTablet = (): void => void setFace('tablet');
  const to = (label: string, value: string | undefined, next: Face): JSX.Element => (
    <Control label={label} value={value} onPress={() => setFace(next)} />
  );
  return (
    <Switch>
      <Match when={face() === 'tablet'}>
        <KitchenPage
          back={kitchenPage.title}
          onBack={() => props.onBack()}
          words={
            <Words headline={words.tablet}>
              <div class="kitchen-grid">
                {to(soundCheck.title, tablet().heard, 'sound')}
                {to(words.night.title, tablet().night, 'night')}
                {to(troubleLines.saveAsFile, tablet().saved, 'save')}
                {to(readAFile.title, undefined, 'file')}
                {to(kitchenPage.promiseTitle, undefined, 'promise')}
                <WaysControls house={props.house} />
              </div>
            </Words>
          }
          controls={
            <>
              {to(pedal.title, tablet().pedal, 'pedal')}
              {to(earKitchen.title, tablet().ear, 'ear')}
            </>
          }
        />
      </Match>
      <Match when={face() === 'night'}>
        <FieldsPage
          title={words.night.title}
          detail={words.night.detail}
          care={words.night.always}
          fields={nightFields(props.house)}
          half={(question) => props.house.half(question)}
          back={words.tablet}
          onBack={toTablet}
        />
      </Match>
      <Match when={face() === 'sound'}>
        <SoundPage
          house={props.house}
          done={bench.thatsIt}
          then={words.tablet}
          back={words.tablet}
          more={to(voiceWords.title, undefined, 'voice')}
          onDone={toTablet}
          onBack={toTablet}
        />
      </Match>
      <Match when={face() === 'voice'}>
        <VoicePage house={props.house} onBack={() => setFace('sound')} />
      </Match>
      <Match when={face() === 'pedal'}>
        <PedalPage house={props.house} onBack={toTablet} />
      </Match>
      <Match when={face() === 'ear'}>
        <Suspense>
          <EarPages house={props.house} onBack={toTablet} />
        </Suspense>
      </Match>
      <Match when={face() === 'save'}>
        <SavePage house={props.house} onBack={toTablet} />
      </Match>
      <Match when={face() === 'file'}>
        <FilePage house={props.house} onBack={toTablet} />
      </Match>
      <Match when={face() === 'promise'}>
        <KitchenPage
          back={words.tablet}
          onBack={toTablet}
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
