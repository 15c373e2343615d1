import { createMemo, createSignal, Match, Show, Switch, type JSX } from 'solid-js';
import type { SpokenNotes } from '../../../../machines/ports.ts';
import type { Neighbour } from '../../../core/circle/circle.ts';
import { byName } from '../../../core/circle/neighbours.ts';
import { KEEPSAKE_LIMITS } from '../../../core/log/keepsake-limits.ts';
import { tagName } from '../../../core/log/tags.ts';
import {
  eraseWords,
  keepsakes as words,
  noteWords,
  whoWords,
} from '../../../core/speech/words/keepsakes.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Pressable } from '../../../parts/Pressable.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import type { HouseCircle } from '../../house-circle.ts';
import { TextFace } from '../../TextFace.tsx';
import type { FaceProps } from '../face.ts';
import { EraseFace } from '../../EraseFace.tsx';
import { LogPage } from '../LogPage.tsx';
import { openKept } from './kept.ts';
import { Photo } from './Photo.tsx';
import { PhotosFace } from './PhotosFace.tsx';
import { shortly } from './shortly.ts';
import { TagsFace } from './TagsFace.tsx';
import { VoicesFace } from './VoicesFace.tsx';
import { WhoFace } from './WhoFace.tsx';
import './Keepsakes.css';

type At = 'all' | 'photos' | 'note' | 'voices' | 'who' | 'tags' | 'erase';

/** What a baker keeps of a bake beside its facts: photos, words, voices, who ate it, tags. */
export default function KeepsakesFace(props: FaceProps & { readonly start: string }): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- a face is of one bake of one house
  const kept = openKept(props.house, props.log, props.start);
  const [at, setAt] = createSignal<At>('all');
  const [photo, setPhoto] = createSignal<string | undefined>();
  const [circle, setCircle] = createSignal<HouseCircle | 'closed' | null>(null);
  const [notes, setNotes] = createSignal<SpokenNotes | 'closed' | null>(null);
  // eslint-disable-next-line solid/reactivity -- the house is one
  void props.house.circle().then(
    (its) => setCircle(() => its),
    () => setCircle('closed'),
  );
  // eslint-disable-next-line solid/reactivity -- and so is its log
  void props.log.voices().then(
    (its) => setNotes(() => its),
    () => setNotes('closed'),
  );
  const said = kept.said;
  const neighbours = createMemo((): readonly Neighbour[] | 'closed' | null => {
    const its = circle();
    return its === null || its === 'closed' ? its : its.circle().neighbours;
  });
  const back = (): void => void setAt('all');
  const counted = (n: number | undefined, most: number): string =>
    n ? fill(words.of, { n, most }) : words.none;
  /** Those that the circle still has, by the names they have now. */
  const who = (): string => {
    const all = neighbours();
    const found = Array.isArray(all) ? byName(all as readonly Neighbour[]) : [];
    const names = found.filter(({ id }) => said().ate.includes(id)).map(({ name }) => name);
    return [...(said().home ? [whoWords.home] : []), ...names].join(', ');
  };
  const openPhoto = (id: string | undefined): void => {
    setPhoto(id);
    setAt('photos');
  };
  const detail = (): string => {
    if (kept.closed()) return words.closedDetail;
    return said().hidden ? words.hidden : words.detail;
  };
  const latest = () => kept.photos()?.at(-1);
  const hide = (): void => void kept.say({ hidden: !said().hidden });
  const erase = async (): Promise<void> => {
    if (await kept.eraseAll()) back();
  };
  const takeNote = async (note: string): Promise<void> => {
    if (note === said().note || (await kept.say({ note }))) back();
  };
  const all = (): JSX.Element => (
    <LogPage
      wide
      back={words.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={kept.closed() ? words.closed : words.title} detail={detail()}>
          <Show when={!kept.closed()}>
            <div class="keep-menu keep-top" role="group" aria-label={words.title}>
              <Pressable
                class="control keep-tall"
                fresh={words.photos}
                onPress={() => openPhoto(latest()?.id)}
              >
                <Show when={latest()} keyed>
                  {(one) => <Photo of={one} class="keep-shown" alt={words.latest} />}
                </Show>
                <span class="control-label">
                  <span class="control-ask">{words.photos}</span>
                  <b class="control-value">
                    {unbroken(counted(kept.photos()?.length, KEEPSAKE_LIMITS.photos))}
                  </b>
                </span>
              </Pressable>
              <Control
                label={words.note}
                value={shortly(said().note) || words.none}
                onPress={() => setAt('note')}
              />
              <Control
                label={words.voices}
                value={counted(kept.voices()?.length, KEEPSAKE_LIMITS.voices)}
                onPress={() => setAt('voices')}
              />
              <Control
                label={words.who}
                value={shortly(who()) || words.none}
                onPress={() => setAt('who')}
              />
              <Control
                label={words.tags}
                value={shortly(said().tags.map(tagName).join(', ')) || words.none}
                onPress={() => setAt('tags')}
              />
            </div>
          </Show>
        </Words>
      }
      controls={
        <Show when={!kept.closed()}>
          <Control label={said().hidden ? words.show : words.hide} onPress={hide} />
          <Control label={words.erase} onPress={() => setAt('erase')} />
        </Show>
      }
    />
  );
  return (
    <Switch fallback={all()}>
      <Match when={at() === 'photos'}>
        <PhotosFace house={props.house} kept={kept} at={photo()} onBack={back} />
      </Match>
      <Match when={at() === 'note'}>
        <TextFace
          page={LogPage}
          ask={noteWords.ask}
          detail={noteWords.detail}
          begun={said().note}
          lines="many"
          most={KEEPSAKE_LIMITS.noteLetters}
          blank
          back={words.title}
          onTake={(note) => void takeNote(note)}
          onBack={back}
        />
      </Match>
      <Match when={at() === 'voices'}>
        <VoicesFace house={props.house} kept={kept} notes={notes()} onBack={back} />
      </Match>
      <Match when={at() === 'who'}>
        <WhoFace kept={kept} neighbours={neighbours()} onBack={back} />
      </Match>
      <Match when={at() === 'tags'}>
        <TagsFace kept={kept} abouts={props.log.abouts()} onBack={back} />
      </Match>
      <Match when={at() === 'erase'}>
        <EraseFace
          page={LogPage}
          ask={eraseWords.ask}
          detail={eraseWords.detail}
          care={eraseWords.stays}
          back={words.title}
          onErase={() => void erase()}
          onBack={back}
        />
      </Match>
    </Switch>
  );
}
