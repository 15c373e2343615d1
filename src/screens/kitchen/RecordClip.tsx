import { createEffect, createSignal, onCleanup, Show, type JSX } from 'solid-js';
import type { NoTake, Studio, Take } from '../../../machines/ports.ts';
import { record as words } from '../../core/speech/words/record.ts';
import { fill } from '../../core/speech/fill.ts';
import { Control } from '../../parts/Control.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { KitchenPage } from '../KitchenPage.tsx';
import { mayRecord } from '../may-record.ts';
import { wordsOf, type Clip } from './record-view.ts';

/** `ready`: nothing is held. `listens`: the microphone is open. `waits`: it is shut. `held`: to be kept. */
type State = 'ready' | 'listens' | 'waits' | 'held';

/** One clip: recorded, listened to, kept or thrown away. */
export function RecordClip(props: {
  readonly house: House;
  readonly studio: Studio;
  readonly clip: Clip;
  readonly recorded: boolean;
  readonly back: string;
  /** What is recorded is another now. */
  readonly onChange: () => void;
  readonly onKept: () => void;
  /** To the next words that nobody has spoken anew. */
  readonly jump: (() => void) | undefined;
  readonly onBack: () => void;
}): JSX.Element {
  const [state, setState] = createSignal<State>('ready');
  const [hears, setHears] = createSignal(false);
  const [told, setTold] = createSignal<string | undefined>();
  let take: Take<null> | null = null;
  const free = (): boolean => mayRecord(props.house.kitchen(), props.house.now());
  const giveUp = (): void => {
    take?.cancel();
    take = null;
  };
  onCleanup(() => {
    giveUp();
    // Nobody has said that it is to be heard.
    if (state() === 'held') void props.studio.drop(props.clip.id).catch(() => undefined);
  });
  // A call is heard with the microphone shut: an iPad plays softly while it listens.
  createEffect(() => {
    if (!free() || props.house.ringing() !== null) giveUp();
  });
  const ended = (why: NoTake | null): void => {
    take = null;
    setState(why === null ? 'held' : 'ready');
    setTold(why === null ? undefined : words.why[why]);
    props.onChange();
  };
  const begin = (): void => {
    if (!free()) return void setTold(words.why.stopped);
    setTold();
    setHears(false);
    setState('listens');
    take = props.studio.record(props.clip.id, setHears);
    void take.over.then(ended);
  };
  const stop = (): void => {
    setState('waits');
    take?.stop();
  };
  const listen = (): void => {
    props.house.armSound(); // in the tap, or the browser does not allow it
    props.house.say(wordsOf(props.clip));
  };
  const keep = (): void =>
    void props.studio.keep(props.clip.id).then(
      () => {
        setState('ready');
        props.onKept();
      },
      () => setTold(words.notKept),
    );
  const drop = (): void => {
    setState('ready');
    void props.studio.drop(props.clip.id).then(
      () => props.onChange(),
      () => setTold(words.notKept),
    );
  };
  const slab = (): JSX.Element => {
    const at = state();
    if (at === 'held') return <Slab label={words.keep} then={words.keepThen} onPress={keep} />;
    if (at === 'ready') return <Slab label={words.begin} then={words.beginThen} onPress={begin} />;
    return (
      <Slab
        label={at === 'listens' ? words.stop : words.wait}
        then={hears() ? words.heard : words.unheard}
        fresh={at}
        disabled={at === 'waits'}
        onPress={stop}
      />
    );
  };
  return (
    <KitchenPage
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={words.say}
          detail={fill(words.words, { words: wordsOf(props.clip) })}
          care={told()}
        />
      }
      slab={slab()}
      controls={
        <Show when={state() === 'ready' || state() === 'held'}>
          <Control label={words.listen} onPress={listen} />
          <Show when={state() === 'held' || props.recorded}>
            <Control label={words.drop} onPress={drop} />
          </Show>
          <Show
            when={state() === 'held'}
            fallback={<Control label={props.back} onPress={() => props.onBack()} />}
          >
            <Control label={words.again} onPress={begin} />
          </Show>
          <Show when={state() === 'ready' && props.jump}>
            {(jump) => <Control label={words.jump} onPress={() => jump()()} />}
          </Show>
        </Show>
      }
    />
  );
}
