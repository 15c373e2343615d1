import { createSignal, For, Show, type JSX } from 'solid-js';
import { knownOf, nextToSay, ROUNDS, type Round } from '../../../core/ear/known.ts';
import type { EarPhrase } from '../../../core/ear/phrases.ts';
import {
  earPeople,
  earPhrases,
  earTakes as words,
} from '../../../core/speech/words/ear-kitchen.ts';
import { handMarks } from '../../../core/speech/words/small.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import { KitchenPage } from '../../KitchenPage.tsx';
import { engineOf, type EarFaceProps } from './face.ts';

/** Phrases on one page: with two presses to turn it, six at most. */
const ON_PAGE = 4;

/** Every phrase of a round and whether it is known: any may be said, and said anew. */
export function PhraseList(
  props: EarFaceProps & { readonly id: string; readonly round: Round },
): JSX.Element {
  const person = () => props.ear.people().find(({ id }) => id === props.id);
  const engine = () => engineOf(props.house);
  const all = (): readonly EarPhrase[] => ROUNDS[props.round];
  const pages = (): number => Math.ceil(all().length / ON_PAGE);
  /** Where something is left to be said. */
  const first = (): number => {
    const its = person();
    const next = its ? nextToSay(its, props.round, engine()) : null;
    return next === null ? 0 : Math.floor(all().indexOf(next) / ON_PAGE);
  };
  const [page, setPage] = createSignal(first());
  return (
    <Show when={person()}>
      {(its) => (
        <KitchenPage
          back={handMarks[its().mark]}
          onBack={() => props.onBack()}
          words={
            <Words headline={earPeople[props.round]}>
              <div class="kitchen-grid">
                <For each={all().slice(page() * ON_PAGE, (page() + 1) * ON_PAGE)}>
                  {(phrase) => (
                    <Control
                      label={earPhrases[phrase]}
                      value={words[knownOf(its(), phrase, engine())]}
                      fresh={phrase}
                      onPress={() =>
                        props.onOpen({ at: 'say', id: props.id, round: props.round, phrase })
                      }
                    />
                  )}
                </For>
              </div>
            </Words>
          }
          controls={
            <>
              <Control
                label={words.back}
                fresh={page()}
                disabled={page() === 0}
                onPress={() => setPage((n) => n - 1)}
              />
              <Control
                label={words.on}
                value={fill(words.of, { done: page() + 1, of: pages() })}
                fresh={page()}
                disabled={page() === pages() - 1}
                onPress={() => setPage((n) => n + 1)}
              />
            </>
          }
        />
      )}
    </Show>
  );
}
