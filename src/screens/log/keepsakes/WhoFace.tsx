import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import type { Neighbour } from '../../../core/circle/circle.ts';
import { byName } from '../../../core/circle/neighbours.ts';
import { keepsakes, whoWords as words } from '../../../core/speech/words/keepsakes.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import { LogPage } from '../LogPage.tsx';
import type { Kept } from './kept.ts';

/** So many names at once, beside those at home. */
const NAMES = 7;

/** Who had of this bread: kept as marks, shown by the names that the circle has now. */
export function WhoFace(props: {
  readonly kept: Kept;
  /** Null: they have not come; 'closed': they cannot be had. */
  readonly neighbours: readonly Neighbour[] | 'closed' | null;
  readonly onBack: () => void;
}): JSX.Element {
  const [page, setPage] = createSignal(0);
  const all = createMemo(() =>
    Array.isArray(props.neighbours) ? byName(props.neighbours as readonly Neighbour[]) : [],
  );
  const pages = (): number => Math.max(1, Math.ceil(all().length / NAMES));
  const at = (): number => Math.min(page(), pages() - 1);
  const isLast = (): boolean => at() === pages() - 1;
  const ate = (id: string): boolean => props.kept.said().ate.includes(id);
  const turn = (id: string): void => {
    const had = props.kept.said().ate;
    void props.kept.say({ ate: ate(id) ? had.filter((one) => one !== id) : [...had, id] });
  };
  const care = (): string | undefined => {
    if (props.neighbours === 'closed') return words.lost;
    return props.neighbours !== null && all().length === 0 ? words.nobody : undefined;
  };
  return (
    <LogPage
      wide
      back={keepsakes.title}
      onBack={() => props.onBack()}
      words={
        <Words headline={words.title} detail={words.detail} care={care()}>
          <div class="keep-grid keep-top" role="group" aria-label={words.title}>
            <Control
              label={words.home}
              value={props.kept.said().home ? words.ate : undefined}
              fresh={words.home}
              chosen={props.kept.said().home}
              onPress={() => void props.kept.say({ home: !props.kept.said().home })}
            />
            <For each={all().slice(at() * NAMES, (at() + 1) * NAMES)}>
              {({ id, name }) => (
                <Control
                  label={name}
                  value={ate(id) ? words.ate : undefined}
                  fresh={id}
                  chosen={ate(id)}
                  onPress={() => turn(id)}
                />
              )}
            </For>
          </div>
        </Words>
      }
      controls={
        <Show when={pages() > 1}>
          <Control
            label={isLast() ? keepsakes.first : keepsakes.later}
            onPress={() => setPage(isLast() ? 0 : at() + 1)}
          />
        </Show>
      }
    />
  );
}
