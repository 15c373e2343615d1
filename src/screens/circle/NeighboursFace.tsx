import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import { byName } from '../../core/circle/neighbours.ts';
import { circle as words, neighbourWords } from '../../core/speech/words/circle.ts';
import { Control } from '../../parts/Control.tsx';
import { Words } from '../../parts/Words.tsx';
import { CirclePage } from './CirclePage.tsx';
import type { FaceProps } from './face.ts';
import { TakeBack } from './orders/TakeBack.tsx';

/** So many names at once: a circle of ten, and room for some more. */
const NAMES = 12;

/** Those who have bread, by their names. */
export function NeighboursFace(props: FaceProps): JSX.Element {
  const [page, setPage] = createSignal(0);
  const all = createMemo(() => byName(props.circle.circle().neighbours));
  const pages = (): number => Math.max(1, Math.ceil(all().length / NAMES));
  /** One was erased: its page may be no more. */
  const at = (): number => Math.min(page(), pages() - 1);
  const isLast = (): boolean => at() === pages() - 1;
  return (
    <CirclePage
      wide
      back={words.title}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={neighbourWords.title}
          detail={all().length === 0 ? neighbourWords.none : undefined}
        >
          <div class="circle-grid circle-top" role="group" aria-label={neighbourWords.title}>
            <For each={all().slice(at() * NAMES, (at() + 1) * NAMES)}>
              {({ id, name, watch }) => (
                <Control
                  label={name}
                  value={watch.length > 0 ? neighbourWords.watches : undefined}
                  fresh={id}
                  onPress={() => props.onOpen({ at: 'neighbour', id })}
                />
              )}
            </For>
          </div>
        </Words>
      }
      controls={
        <>
          <Control
            label={neighbourWords.add}
            onPress={() => props.onOpen({ at: 'new neighbour' })}
          />
          <Show when={pages() > 1}>
            <Control
              label={isLast() ? neighbourWords.first : neighbourWords.later}
              onPress={() => setPage(isLast() ? 0 : at() + 1)}
            />
          </Show>
          <TakeBack house={props.house} circle={props.circle} />
        </>
      }
    />
  );
}
