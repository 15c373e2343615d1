import { createEffect, createSignal, For, onCleanup, Show, type JSX } from 'solid-js';
import type { CallKind, Stop } from '../../machines/ports.ts';
import { HEARD, type Heard } from '../core/kitchen/equipment.ts';
import { callWords } from '../core/speech/words/calls.ts';
import { ear } from '../core/speech/words/kitchen.ts';
import { soundCheck } from '../core/speech/words/sound-check.ts';
import { CallMark } from '../parts/CallMark.tsx';
import { Control } from '../parts/Control.tsx';
import { Slab } from '../parts/Slab.tsx';
import { Tiles } from '../parts/Tiles.tsx';
import { Words } from '../parts/Words.tsx';
import type { House } from './house.ts';
import { KitchenPage } from './KitchenPage.tsx';
import { tongueVoiceOf } from './tongue-voice.ts';
import { endsByTouch } from './ends-by-touch.ts';
import { BESIDE, CALLS, playCalls } from './play-calls.ts';
import './SoundPage.css';

/** The three calls as they really sound, heard from where the baker will be: played, answered, done. */
export default function SoundPage(props: {
  readonly house: House;
  /** The slab once it is answered, and where it leads. */
  readonly done: string;
  readonly then: string;
  /** Where the page is left for unanswered. */
  readonly back: string;
  /** Presses beside these, before the calls are played. */
  readonly more?: JSX.Element;
  readonly onDone: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [played, setPlayed] = createSignal(false);
  const [sounding, setSounding] = createSignal<CallKind | null>(null);
  const voice = tongueVoiceOf(props.house);
  const [tests, setTests] = createSignal(false);
  const [answer, setAnswer] = createSignal<Heard | null>(null);
  let stop: Stop = () => undefined;
  onCleanup(() => stop());
  const test = (): void => {
    stop();
    props.house.armSound();
    setTests(true);
    const { house } = props;
    const end = playCalls(
      (kind) => {
        const silence = house.tryCall(kind, 0);
        house.say(callWords[kind]);
        return silence;
      },
      (kind) => {
        setSounding(kind);
        if (kind === null) stop();
      },
      BESIDE,
    );
    stop = endsByTouch(() => {
      end();
      house.say('');
      stop = () => undefined;
      setSounding(null);
      setTests(false);
    });
  };
  const play = (): void => {
    stop();
    props.house.armSound(); // in the tap, or the browser does not allow it
    setSounding(null);
    setPlayed(true);
    stop = playCalls((kind) => props.house.tryCall(kind, 0), setSounding);
  };
  // A call in earnest is heard alone.
  createEffect(() => {
    if (props.house.ringing() === null) return;
    stop();
    setSounding(null);
  });
  const take = (heard: Heard): void => {
    stop();
    setSounding(null);
    props.house.equip({ sound: { at: props.house.now(), heard } });
    setAnswer(heard);
  };
  const again = (): void => {
    setAnswer(null);
    play();
  };
  const isMute = (): boolean => sounding() !== null && props.house.sound() !== 'armed';
  const calls = (): JSX.Element => (
    <ul class="sound-calls">
      <For each={CALLS}>
        {(kind) => (
          <li data-sounds={sounding() === kind ? '' : undefined}>
            <CallMark kind={kind} word={callWords[kind]} />
          </li>
        )}
      </For>
    </ul>
  );
  return (
    <Show
      when={answer()}
      fallback={
        <KitchenPage
          back={props.back}
          onBack={() => props.onBack()}
          words={
            <Words
              headline={played() ? soundCheck.ask : soundCheck.title}
              detail={
                tests()
                  ? (voice() ?? soundCheck.testing)
                  : played()
                    ? soundCheck.limits
                    : soundCheck.detail
              }
              care={isMute() ? soundCheck.mute : played() ? undefined : soundCheck.noAlarm}
            >
              {calls()}
              <Show when={played()}>
                <Tiles
                  label={soundCheck.ask}
                  options={HEARD.map((value) => ({ value, ...soundCheck.answers[value] }))}
                  onChoose={(heard) => take(heard as Heard)}
                />
              </Show>
            </Words>
          }
          slab={
            <Slab
              label={played() ? soundCheck.again : soundCheck.play}
              then={props.house.sound() === 'unavailable' ? ear.sound.unavailable : soundCheck.then}
              fresh={played()}
              disabled={props.house.sound() === 'unavailable'}
              onPress={play}
            />
          }
          controls={
            <>
              <Show when={!played()}>
                <Control
                  label={soundCheck.answers.sightOnly.label}
                  onPress={() => take('sightOnly')}
                />
                {props.more}
                <Control label={soundCheck.test} onPress={test} />
              </Show>
              <Control label={props.back} onPress={() => props.onBack()} />
            </>
          }
        />
      }
    >
      {(heard) => (
        <KitchenPage
          back={props.back}
          onBack={() => props.onBack()}
          words={
            <Words
              headline={soundCheck.results[heard()]}
              detail={soundCheck.means[heard()]}
              care={soundCheck.noAlarm}
            />
          }
          slab={
            <Slab
              label={props.done}
              then={props.then}
              fresh={heard()}
              onPress={() => props.onDone()}
            />
          }
          controls={<Control label={soundCheck.again} onPress={again} />}
        />
      )}
    </Show>
  );
}
