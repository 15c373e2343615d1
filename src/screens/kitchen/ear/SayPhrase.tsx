import { createEffect, createSignal, onCleanup, onMount, type JSX } from 'solid-js';
import type { Take } from '../../../../machines/ports.ts';
import { knownOf, nextToSay, ROUNDS, type Round } from '../../../core/ear/known.ts';
import { TAKES, type Saying } from '../../../core/ear/person.ts';
import type { EarPhrase } from '../../../core/ear/phrases.ts';
import { earPhrases, earTakes as words } from '../../../core/speech/words/ear-kitchen.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { EarPanel } from '../../../parts/EarPanel.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import { KitchenPage } from '../../KitchenPage.tsx';
import { mayRecord } from '../../may-record.ts';
import { engineOf, notWritten, type EarFaceProps } from './face.ts';
import { phrasePicture } from './phrase-picture.tsx';
import { TakeTicks } from './TakeTicks.tsx';

/** `ready`: shut. `listens`: the microphone is open. `waits`: it is written. `held`: that could not be done. */
type State = 'ready' | 'listens' | 'waits' | 'held';

/** One phrase, said as often as it takes: one press begins, and each take and each phrase follows the one before. */
export function SayPhrase(
  props: EarFaceProps & {
    readonly id: string;
    readonly round: Round;
    readonly phrase: EarPhrase;
    readonly goesOn: boolean;
  },
): JSX.Element {
  const [state, setState] = createSignal<State>('ready');
  const [hears, setHears] = createSignal(false);
  const [told, setTold] = createSignal<string | undefined>();
  const [takes, setTakes] = createSignal<readonly (readonly Saying[])[]>([]);
  let take: Take<readonly Saying[]> | null = null;
  let here = true;
  // eslint-disable-next-line solid/reactivity -- a phrase is said to one ear
  const engine = engineOf(props.house);
  const person = () => props.ear.people().find(({ id }) => id === props.id);
  const isKnown = (): boolean => {
    const its = person();
    return its !== undefined && knownOf(its, props.phrase, engine) === 'yes';
  };
  const free = (): boolean => mayRecord(props.house.kitchen(), props.house.now());
  const rings = (): boolean => props.house.ringing() !== null;
  const giveUp = (): void => {
    take?.cancel();
    take = null;
  };
  onCleanup(() => {
    here = false;
    giveUp();
  });
  // A call is heard with the microphone shut: an iPad plays softly while it listens.
  createEffect(() => {
    if (rings() || !free()) giveUp();
  });
  const stop = (why: keyof typeof words.why): void => {
    setState('ready');
    setTold(words.why[why]);
  };
  const listen = (): void => {
    if (!free()) return stop('hot');
    if (rings()) return stop('stopped');
    setTold();
    setHears(false);
    setState('listens');
    take = props.ear.take(engine, setHears);
    void take.over.then((taken) => {
      take = null;
      if (!here) return;
      if (typeof taken === 'string') return stop(taken);
      if (taken.length === 0) return stop('silent');
      setTakes([...takes(), taken]);
      if (takes().length < TAKES) listen();
      else void keep();
    });
  };
  const begin = (): void => {
    // What the tablet says is not to be learned.
    props.house.say('');
    listen();
  };
  onMount(() => {
    if (props.goesOn) begin();
  });
  const to = (phrase: EarPhrase | null, goesOn = false): void => {
    const { id, round } = props;
    if (phrase === null) props.onOpen({ at: 'done', id, round });
    else props.onOpen({ at: 'say', id, round, phrase, goesOn });
  };
  const toNext = (goesOn: boolean): void => {
    const its = person();
    if (its) to(nextToSay(its, props.round, engine, props.phrase), goesOn);
  };
  const keep = async (): Promise<void> => {
    const its = person();
    if (!its) return;
    setTold();
    setState('waits');
    const sayings = { ...its.sayings, [props.phrase]: takes().flat() };
    const why = await props.ear.keep({ ...its, sayings });
    if (!here) return;
    if (why === null) return toNext(true);
    setState('held');
    setTold(notWritten(why));
  };
  const slab = (): JSX.Element => {
    const left = TAKES - takes().length;
    switch (state()) {
      case 'ready':
        return (
          <Slab
            label={left === TAKES ? words.begin : words.beginAgain}
            then={left === 1 ? words.lastThen : fill(words.beginThen, { count: left })}
            onPress={begin}
          />
        );
      case 'listens':
        return (
          <Slab
            label={hears() ? words.heard : words.unheard}
            then={words.ends}
            fresh="listens"
            onPress={() => take?.stop()}
          />
        );
      case 'waits':
        return <Slab label={words.waits} fresh="waits" disabled onPress={() => undefined} />;
      case 'held':
        return <Slab label={words.keep} then={words.keepThen} onPress={() => void keep()} />;
    }
  };
  const before = () => {
    const all: readonly EarPhrase[] = ROUNDS[props.round];
    return all[all.indexOf(props.phrase) - 1];
  };
  const ear = (): string =>
    state() === 'listens' ? (hears() ? words.heard : words.unheard) : words.shut;
  return (
    <KitchenPage
      back={words.list}
      onBack={() => props.onBack()}
      words={
        <Words
          picture={phrasePicture(props.phrase)}
          headline={fill(words.phrase, { words: earPhrases[props.phrase] })}
          detail={isKnown() && takes().length === 0 ? words.known : words.detail}
          care={told()}
        >
          <TakeTicks done={takes().length} />
        </Words>
      }
      slab={slab()}
      aside={<EarPanel sound={ear()} lit="" />}
      controls={
        <>
          <Control label={words.list} onPress={() => props.onBack()} />
          <Control
            label={words.before}
            fresh={props.phrase}
            disabled={before() === undefined}
            onPress={() => to(before()!)}
          />
          <Control label={words.skip} fresh={props.phrase} onPress={() => toNext(false)} />
        </>
      }
    />
  );
}
