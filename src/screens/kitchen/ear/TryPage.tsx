import { createEffect, createSignal, Match, onCleanup, Show, Switch, type JSX } from 'solid-js';
import type { Stop } from '../../../../machines/ports.ts';
import { knownIn } from '../../../core/ear/known.ts';
import { tryRound, type Tried, type TryTold } from '../../../core/ear/try-round.ts';
import { earPhrases, earTakes, earTry as words } from '../../../core/speech/words/ear-kitchen.ts';
import { handMarks } from '../../../core/speech/words/small.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { EarPanel } from '../../../parts/EarPanel.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import { KitchenPage } from '../../KitchenPage.tsx';
import { mayRecord } from '../../may-record.ts';
import { engineOf, type EarFaceProps } from './face.ts';
import { phrasePicture } from './phrase-picture.tsx';
import { runTry, type TryOver } from './run-try.ts';
import { TryResult } from './TryResult.tsx';

/** How well somebody is heard where they will stand: a minute of what is asked for, and what came of it. */
export function TryPage(props: EarFaceProps & { readonly id: string }): JSX.Element {
  const [at, setAt] = createSignal<number | null>(null);
  const [speaks, setSpeaks] = createSignal(false);
  const [over, setOver] = createSignal<{
    readonly told: TryTold;
    readonly why: TryOver | 'stopped';
  } | null>(null);
  const [care, setCare] = createSignal<string | undefined>();
  let stop: Stop | null = null;
  let isCalled = false;
  onCleanup(() => stop?.());
  const person = () => props.ear.people().find(({ id }) => id === props.id);
  const isOff = (): boolean => props.house.equipment().ear === 'off';
  const engine = () => engineOf(props.house);
  const round = (): readonly Tried[] => {
    const its = person();
    return its ? tryRound(knownIn(its, 'phrases', engine())) : [];
  };
  const free = (): boolean => mayRecord(props.house.kitchen(), props.house.now());
  const rings = (): boolean => props.house.ringing() !== null;
  // A call is heard with the microphone shut.
  createEffect(() => {
    if (!rings() && free()) return;
    isCalled = true;
    stop?.();
  });
  const begin = (): void => {
    setOver(null);
    setCare();
    if (!free() || rings()) return void setCare(earTakes.why.hot);
    isCalled = false;
    // What the tablet says is not to be heard.
    props.house.say('');
    const tell = {
      asks: setAt,
      speaks: setSpeaks,
      over(told: TryTold, why: TryOver) {
        stop = null;
        setAt(null);
        setOver({ told, why: isCalled ? 'stopped' : why });
      },
    };
    const who = { engine: engine(), people: props.ear.people() };
    stop = runTry(props.ear, who, round(), tell);
  };
  const blocked = (): string | undefined => {
    if (isOff()) return words.off;
    return round().length === 0 ? words.few : undefined;
  };
  const back = (): string => handMarks[person()!.mark];
  const readyFace = (): JSX.Element => (
    <KitchenPage
      back={back()}
      onBack={() => props.onBack()}
      words={<Words headline={words.title} detail={words.detail} care={blocked() ?? care()} />}
      slab={
        blocked() === undefined ? (
          <Slab label={words.begin} then={words.beginThen} onPress={begin} />
        ) : undefined
      }
      controls={
        <Show when={blocked() === undefined}>
          <Control label={back()} onPress={() => props.onBack()} />
        </Show>
      }
    />
  );
  const runFace = (n: number): JSX.Element => {
    const asked = () => round()[n]!.asked;
    return (
      <KitchenPage
        back={back()}
        onBack={() => props.onBack()}
        words={
          <Words
            picture={phrasePicture(asked())}
            headline={fill(earTakes.phrase, { words: earPhrases[asked()] })}
            detail={words.shown}
          />
        }
        slab={
          <Slab
            label={words.stop}
            then={fill(words.of, { done: n + 1, of: round().length })}
            fresh="runs"
            onPress={() => stop?.()}
          />
        }
        aside={<EarPanel sound={speaks() ? earTakes.heard : earTakes.unheard} lit="" />}
      />
    );
  };
  return (
    <Show when={person()}>
      <Switch fallback={readyFace()}>
        <Match when={at() !== null}>{runFace(at()!)}</Match>
        <Match when={over()}>
          {(its) => (
            <TryResult
              told={its().told}
              why={its().why}
              back={back()}
              onAgain={begin}
              onBack={() => props.onBack()}
            />
          )}
        </Match>
      </Switch>
    </Show>
  );
}
