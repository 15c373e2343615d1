import { createSignal, Match, Show, Switch, type JSX } from 'solid-js';
import { earKitchen as words } from '../../../core/speech/words/ear-kitchen.ts';
import { kitchenFields } from '../../../core/speech/words/kitchen-fields.ts';
import { Words } from '../../../parts/Words.tsx';
import type { HouseEar } from '../../house-ear.ts';
import type { House } from '../../house.ts';
import { KitchenPage } from '../../KitchenPage.tsx';
import { EarHome } from './EarHome.tsx';
import { EnginePage } from './EnginePage.tsx';
import { EraseVoices } from './EraseVoices.tsx';
import { ExpectPage } from './ExpectPage.tsx';
import { faceOver, type EarFace, type EarFaceProps } from './face.ts';
import { NewVoice } from './NewVoice.tsx';
import { PeoplePage } from './PeoplePage.tsx';
import { PersonPage } from './PersonPage.tsx';
import { PhraseList } from './PhraseList.tsx';
import { RoundDone } from './RoundDone.tsx';
import { SayPhrase } from './SayPhrase.tsx';
import { TryPage } from './TryPage.tsx';
import './Ear.css';

/** The ear: whether it listens, whose voices it knows, and how well it hears here. */
export default function EarPages(props: {
  readonly house: House;
  readonly onBack: () => void;
}): JSX.Element {
  const [ear, setEar] = createSignal<HouseEar | null>(null);
  const [closed, setClosed] = createSignal(false);
  // eslint-disable-next-line solid/reactivity -- the house is one
  void props.house.ear().then(
    (its) => setEar(() => its),
    () => setClosed(true),
  );
  return (
    <Show
      when={ear()}
      fallback={
        <KitchenPage
          back={kitchenFields.tablet}
          onBack={() => props.onBack()}
          words={
            <Words
              headline={closed() ? words.closed : words.opening}
              detail={closed() ? words.closedDetail : undefined}
            />
          }
        />
      }
    >
      {(its) => <Faces house={props.house} ear={its()} onBack={() => props.onBack()} />}
    </Show>
  );
}

function Faces(props: {
  readonly house: House;
  readonly ear: HouseEar;
  readonly onBack: () => void;
}): JSX.Element {
  const [face, setFace] = createSignal<EarFace>({ at: 'ear' });
  const at = <A extends EarFace['at']>(which: A) => {
    const now = face();
    return now.at === which ? (now as Extract<EarFace, { readonly at: A }>) : null;
  };
  const back = (): void => {
    const over = faceOver(face());
    if (over === null) props.onBack();
    else setFace(over);
  };
  const own = (): EarFaceProps => ({
    house: props.house,
    ear: props.ear,
    onOpen: (next) => setFace(next),
    onBack: back,
  });
  return (
    <Switch fallback={<EarHome {...own()} />}>
      <Match when={at('engine')}>
        <EnginePage {...own()} />
      </Match>
      <Match when={at('expect')}>
        <ExpectPage onBack={back} />
      </Match>
      <Match when={at('eraseAll')}>
        <EraseVoices {...own()} id={null} />
      </Match>
      <Match when={at('people')}>
        <PeoplePage {...own()} />
      </Match>
      <Match when={at('new')}>
        <NewVoice {...own()} />
      </Match>
      <Match when={at('person')}>{(at) => <PersonPage {...own()} id={at().id} />}</Match>
      <Match when={at('erase')}>{(at) => <EraseVoices {...own()} id={at().id} />}</Match>
      <Match when={at('try')}>{(at) => <TryPage {...own()} id={at().id} />}</Match>
      <Match when={at('list')}>
        {(at) => <PhraseList {...own()} id={at().id} round={at().round} />}
      </Match>
      <Match when={at('done')}>
        {(at) => <RoundDone {...own()} id={at().id} round={at().round} />}
      </Match>
      <Match when={at('say')} keyed>
        {(at) => (
          <SayPhrase
            {...own()}
            id={at.id}
            round={at.round}
            phrase={at.phrase}
            goesOn={at.goesOn === true}
          />
        )}
      </Match>
    </Switch>
  );
}
