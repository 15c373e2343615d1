import {
  createEffect,
  createMemo,
  createSignal,
  lazy,
  onMount,
  Show,
  Suspense,
  type JSX,
} from 'solid-js';
import { record } from '../../core/speech/en/record.ts';
import { soundCheck } from '../../core/speech/en/sound-check.ts';
import { voiceWords as words } from '../../core/speech/en/voice.ts';
import { Control } from '../../parts/Control.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { KitchenPage } from '../KitchenPage.tsx';
import { mayRecord } from './record-view.ts';

const RecordPage = lazy(() => import('./RecordPage.tsx'));

/** What the voice may do beyond its clips. */
export function VoicePage(props: {
  readonly house: House;
  readonly onBack: () => void;
}): JSX.Element {
  const [records, setRecords] = createSignal(false);
  const [reads, setReads] = createSignal<boolean | null>(null);
  onMount(() => void props.house.reads().then(setReads));
  const isOn = (): boolean => props.house.equipment().readsOwn;
  const [owed, setOwed] = createSignal(false);
  const turn = (): void => {
    props.house.equip({ readsOwn: !isOn() });
    setOwed(isOn());
    if (isOn()) props.house.armSound(); // in the tap, or the browser does not allow it
  };
  // Once it is turned on it is heard, as soon as anything can be.
  createEffect(() => {
    if (!owed() || props.house.sound() !== 'armed') return;
    setOwed(false);
    const named = props.house.formulas().find(({ formula }) => formula !== null);
    props.house.say(named?.formula?.name ?? '');
  });
  const isFree = createMemo(() => mayRecord(props.house.kitchen(), props.house.now()));
  const page = (): JSX.Element => (
    <KitchenPage
      back={soundCheck.title}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={words.title}
          detail={reads() === null ? words.asking : words.detail}
          care={reads() === false ? words.none : undefined}
        >
          <div class="kitchen-grid">
            <Control
              label={words.own}
              value={isOn() ? words.ownOn : words.ownOff}
              chosen={isOn()}
              onPress={turn}
            />
            <Control
              label={record.title}
              value={isFree() ? undefined : record.closed}
              disabled={!isFree()}
              onPress={() => setRecords(true)}
            />
          </div>
        </Words>
      }
    />
  );
  return (
    <Show when={records()} fallback={page()}>
      <Suspense>
        <RecordPage house={props.house} onBack={() => setRecords(false)} />
      </Suspense>
    </Show>
  );
}
