import { createEffect, createSignal, For, onCleanup, Show, type JSX } from 'solid-js';
import type {
  NoTake,
  Played,
  SpokenNotes,
  Stop,
  Take,
  VoiceNote,
} from '../../../../machines/ports.ts';
import type { Keepsake } from '../../../core/log/about.ts';
import { KEEPSAKE_LIMITS } from '../../../core/log/keepsake-limits.ts';
import { keepsakes, spokenWords as words } from '../../../core/speech/words/keepsakes.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { mayRecord } from '../../may-record.ts';
import { EraseFace } from '../../EraseFace.tsx';
import { LogPage } from '../LogPage.tsx';
import type { Kept } from './kept.ts';

/** What somebody said of a bake: recorded, heard again by a press, erased for good. A call comes before both. */
export function VoicesFace(props: {
  readonly house: House;
  readonly kept: Kept;
  readonly notes: SpokenNotes | 'closed' | null;
  readonly onBack: () => void;
}): JSX.Element {
  const [records, setRecords] = createSignal<'listens' | 'waits' | null>(null);
  const [hears, setHears] = createSignal(false);
  const [plays, setPlays] = createSignal<string | null>(null);
  const [told, setTold] = createSignal<string | undefined>();
  /** The one that was pressed last: it may be erased. */
  const [at, setAt] = createSignal<string | null>(null);
  const [erases, setErases] = createSignal(false);
  let take: Take<VoiceNote> | null = null;
  let stopPlaying: Stop = () => {};
  const all = () => props.kept.voices() ?? [];
  const numberOf = (id: string | null): number => all().findIndex((one) => one.id === id) + 1;
  const notes = (): SpokenNotes | null => (props.notes === 'closed' ? null : props.notes);
  const free = (): boolean => mayRecord(props.house.kitchen(), props.house.now());
  const isFull = (): boolean => all().length >= KEEPSAKE_LIMITS.voices;
  const giveUp = (): void => {
    take?.cancel();
    take = null;
  };
  onCleanup(() => {
    giveUp();
    stopPlaying();
  });
  // A call is heard with the microphone shut and alone: an iPad plays softly while it listens.
  createEffect(() => {
    const rings = props.house.ringing() !== null;
    if (rings || !free()) giveUp();
    // One voice at a time: what the tablet says comes before what somebody said once.
    if (rings || props.house.caption() !== '') stopPlaying();
  });
  const ended = async (taken: VoiceNote | NoTake): Promise<void> => {
    take = null;
    if (typeof taken === 'string') setTold(words.why[taken]);
    else if (await props.kept.takeVoice(taken)) setAt(all().at(-1)?.id ?? null);
    setRecords(null);
  };
  const record = (): void => {
    if (!free()) return void setTold(words.why.hot);
    stopPlaying();
    props.house.say('');
    setTold();
    setHears(false);
    setRecords('listens');
    take = notes()!.record(setHears);
    void take.over.then(ended);
  };
  const stop = (): void => {
    setRecords('waits');
    // The microphone is shut by now: what was said is kept, whoever calls and wherever one goes.
    const its = take;
    take = null;
    its?.stop();
  };
  const play = (one: Keepsake): void => {
    const was = plays();
    stopPlaying();
    setAt(one.id);
    if (was === one.id || props.house.ringing() !== null) return;
    props.house.say('');
    setTold();
    const playing = notes()!.play(one);
    stopPlaying = playing.stop;
    setPlays(one.id);
    void playing.over.then((how: Played) => {
      if (plays() === one.id) setPlays(null);
      if (how === 'lost') setTold(words.lost);
    });
  };
  const erase = async (): Promise<void> => {
    const id = at();
    if (id !== null && (await props.kept.erase(id))) {
      setAt(null);
      setErases(false);
    }
  };
  const slab = (): JSX.Element => {
    const now = records();
    if (now !== null)
      return (
        <Slab
          label={now === 'listens' ? words.stop : words.wait}
          then={hears() ? words.heard : words.unheard}
          fresh={now}
          disabled={now === 'waits'}
          onPress={stop}
        />
      );
    return (
      <Slab
        label={isFull() ? words.full : words.record}
        then={isFull() ? words.fullThen : words.recordThen}
        fresh="record"
        disabled={isFull() || notes() === null || !props.house.holds}
        onPress={record}
      />
    );
  };
  const care = (): string | undefined => (props.notes === 'closed' ? words.noMicrophone : told());
  return (
    <Show
      when={erases()}
      fallback={
        <LogPage
          back={keepsakes.title}
          onBack={() => props.onBack()}
          words={
            <Words
              headline={words.title}
              detail={all().length === 0 ? words.none : words.detail}
              care={care()}
            >
              <div class="keep-grid keep-top" role="group" aria-label={words.title}>
                <For each={all()}>
                  {(one) => (
                    <Control
                      label={fill(words.one, { n: numberOf(one.id) })}
                      value={
                        plays() === one.id
                          ? words.plays
                          : fill(words.at, {
                              date: props.house.day(one.at),
                              time: props.house.hour(one.at),
                            })
                      }
                      fresh={one.id}
                      chosen={at() === one.id}
                      disabled={records() !== null || notes() === null}
                      onPress={() => play(one)}
                    />
                  )}
                </For>
              </div>
            </Words>
          }
          slab={slab()}
          controls={
            <>
              <Control label={keepsakes.title} onPress={() => props.onBack()} />
              <Show when={numberOf(at()) > 0 && records() === null}>
                <Control
                  label={fill(words.erase, { n: numberOf(at()) })}
                  fresh={at()}
                  onPress={() => {
                    stopPlaying();
                    setErases(true);
                  }}
                />
              </Show>
            </>
          }
        />
      }
    >
      <EraseFace
        page={LogPage}
        ask={fill(words.eraseAsk, { n: numberOf(at()) })}
        detail={words.eraseDetail}
        back={words.title}
        onErase={() => void erase()}
        onBack={() => setErases(false)}
      />
    </Show>
  );
}
