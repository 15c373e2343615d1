import { createSignal, onCleanup, Show, type JSX } from 'solid-js';
import type { CallKind, Stop } from '../../machines/ports.ts';
import type { Heard } from '../core/kitchen/equipment.ts';
import { worstHeard } from '../core/kitchen/worst-heard.ts';
import { soundCheck } from '../core/speech/en/kitchen.ts';
import { fill } from '../core/speech/fill.ts';
import { Control } from '../parts/Control.tsx';
import { Slab } from '../parts/Slab.tsx';
import { Tiles } from '../parts/Tiles.tsx';
import { Words } from '../parts/Words.tsx';
import type { House } from './house.ts';
import { KitchenPage } from './KitchenPage.tsx';

const CALLS: readonly CallKind[] = ['look', 'act', 'hot'];
/** A count of three, ms of real time: the baker is on the way to the next room. */
const COUNT_MS = 3_000;

/** The three calls as they really sound, heard from where the baker will be. */
export function SoundPage(props: {
  readonly house: House;
  /** Where it leads when it is done. */
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  const [answers, setAnswers] = createSignal<readonly Heard[]>([]);
  const [played, setPlayed] = createSignal(false);
  let stop: Stop = () => undefined;
  onCleanup(() => stop());
  const kind = () => CALLS[answers().length] ?? null;
  const play = (): void => {
    const now = kind();
    if (now === null) return;
    stop();
    stop = props.house.tryCall(now, COUNT_MS);
    setPlayed(true);
  };
  const finish = (heard: Heard): void => {
    stop();
    props.house.equip({ sound: { at: props.house.now(), heard } });
  };
  const answer = (heard: Heard): void => {
    stop();
    setPlayed(false);
    setAnswers((old) => [...old, heard]);
    if (kind() === null) finish(worstHeard(answers()));
  };
  const result = () => props.house.equipment().sound?.heard ?? 'sightOnly';
  return (
    <Show
      when={kind()}
      fallback={
        <KitchenPage
          back={props.back}
          onBack={() => props.onBack()}
          words={
            <Words
              headline={soundCheck.results[result()]}
              detail={
                result() === 'yes'
                  ? soundCheck.noAlarm
                  : `${soundCheck.louder} ${soundCheck.door} ${soundCheck.noAlarm}`
              }
            />
          }
          controls={<Control label={soundCheck.again} onPress={() => setAnswers([])} />}
        />
      }
    >
      {(now) => (
        <KitchenPage
          back={props.back}
          onBack={() => props.onBack()}
          words={
            <Words
              headline={played() ? soundCheck.ask : soundCheck.title}
              detail={played() ? soundCheck.counted : soundCheck.detail}
            >
              <Show when={played()}>
                <Tiles
                  label={soundCheck.ask}
                  options={[
                    { value: 'yes', label: soundCheck.heard },
                    { value: 'faint', label: soundCheck.faint },
                    { value: 'no', label: soundCheck.notHeard },
                  ]}
                  onChoose={(heard) => answer(heard as Heard)}
                />
              </Show>
            </Words>
          }
          slab={
            <Slab
              label={
                played()
                  ? soundCheck.again
                  : fill(soundCheck.play, { name: soundCheck.names[now()] })
              }
              fresh={`${now()} ${played()}`}
              onPress={play}
            />
          }
          controls={
            <>
              <Control
                label={soundCheck.sightOnly}
                onPress={() => {
                  finish('sightOnly');
                  props.onBack();
                }}
              />
              <Control label={props.back} onPress={() => props.onBack()} />
            </>
          }
        />
      )}
    </Show>
  );
}
