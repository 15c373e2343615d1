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
import { bulk } from '../../core/speech/words/bulk.ts';
import { record } from '../../core/speech/words/record.ts';
import { soundCheck } from '../../core/speech/words/sound-check.ts';
import { voiceWords as words } from '../../core/speech/words/voice.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import { Control } from '../../parts/Control.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { KitchenPage } from '../KitchenPage.tsx';
import { tongueVoiceOf } from '../tongue-voice.ts';
import { mayRecord } from '../may-record.ts';

const RecordPage = lazy(() => import('./RecordPage.tsx'));

/** What the voice may do beyond its clips. */
export function VoicePage(props: {
  readonly house: House;
  readonly onBack: () => void;
}): JSX.Element {
  const [records, setRecords] = createSignal(false);
  const [reads, setReads] = createSignal<boolean | null>(null);
  onMount(() => void props.house.reads().then(setReads));
  const voice = tongueVoiceOf(props.house);
  const isOn = (): boolean => props.house.equipment().readsOwn;
  const [owed, setOwed] = createSignal<string | null>(null);
  const hear = (sample: string): void => {
    setOwed(sample);
    props.house.armSound(); // in the tap, or the browser does not allow it
  };
  const turn = (): void => {
    props.house.equip({ readsOwn: !isOn() });
    const named = props.house.formulas().find(({ formula }) => formula !== null);
    if (isOn()) hear(showBread(named?.formula?.name ?? ''));
    else setOwed(null);
  };
  const pace = () => props.house.equipment().pace;
  const slow = (): void => {
    props.house.equip({ pace: pace() === 'small' ? 'grown' : 'small' });
    hear(bulk['bulk.spread'].spoken);
  };
  // What was chosen is heard, as soon as anything can be.
  createEffect(() => {
    const sample = owed();
    if (sample === null || props.house.sound() !== 'armed') return;
    setOwed(null);
    props.house.say(sample);
  });
  const isFree = createMemo(() => mayRecord(props.house.kitchen(), props.house.now()));
  const page = (): JSX.Element => (
    <KitchenPage
      back={soundCheck.title}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={words.title}
          detail={reads() === null ? words.asking : (voice() ?? words.detail)}
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
              label={words.slower}
              value={words.slowerIs[pace()]}
              chosen={pace() === 'small'}
              onPress={slow}
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
