import { createMemo, For, Show, type JSX } from 'solid-js';
import type { Ingredient } from '../../../core/circle/circle.ts';
import { foundIn, pageOf } from '../../../core/circle/cupboard.ts';
import { ingredientKey } from '../../../core/circle/ingredient-key.ts';
import { cupboard } from '../../../core/speech/en/cupboard.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Pressable } from '../../../parts/Pressable.tsx';
import { Words } from '../../../parts/Words.tsx';
import { CupboardPage } from './CupboardPage.tsx';
import { PageControls } from './PageControls.tsx';
import type { Store } from './store.ts';
import { begun, thereTold } from './words.ts';

/** So many stand on a page: two rows of them over the slab. */
const PAGE = 8;

/** What is in the cupboard, page by page. `sought`: words of a name that it is narrowed to. */
export function ListFace(props: {
  readonly store: Store;
  readonly sought: string;
  /** Which page. */
  readonly at: number;
  readonly onPage: (at: number) => void;
  readonly back: string;
  readonly onPick: (id: string) => void;
  readonly onFind: () => void;
  readonly onAll: () => void;
  readonly onAdd: (name: string) => void;
  readonly onShopping: () => void;
  readonly onCosts: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const found = createMemo(() => foundIn(props.store.ingredients(), props.sought));
  const page = createMemo(() => pageOf(found(), PAGE, props.at));
  const isKnown = (): boolean => found().some(({ id }) => id === ingredientKey(props.sought));
  const detail = (): string => {
    const { at: n, pages } = page();
    const which = pages > 1 ? fill(cupboard.page, { n: n + 1, count: pages }) : null;
    if (props.sought !== '') {
      return [fill(cupboard.found, { name: props.sought }), which].filter(Boolean).join('. ');
    }
    return which ?? cupboard.detail;
  };
  const isLow = ({ id }: Ingredient): boolean => props.store.there(id).grams === 0;
  return (
    <CupboardPage
      wide
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={cupboard.title} detail={detail()}>
          <div class="cupboard-grid cupboard-top" role="group" aria-label={cupboard.title}>
            <For each={page().shown}>
              {(one) => (
                <Pressable
                  class="cupboard-entry"
                  fresh={one.id}
                  onPress={() => props.onPick(one.id)}
                >
                  <b>{begun(one.name)}</b>
                  <span data-low={isLow(one) ? '' : undefined}>
                    {thereTold(props.store.there(one.id), props.store.house.ways())}
                  </span>
                </Pressable>
              )}
            </For>
          </div>
        </Words>
      }
      controls={
        <>
          <Show
            when={props.sought === ''}
            fallback={
              <>
                <Control label={cupboard.all} onPress={() => props.onAll()} />
                <Show when={!isKnown()}>
                  <Control label={cupboard.add} onPress={() => props.onAdd(props.sought)} />
                </Show>
              </>
            }
          >
            <Control label={cupboard.shopping} onPress={() => props.onShopping()} />
            <Control label={cupboard.costs} onPress={() => props.onCosts()} />
            <Control label={cupboard.find} onPress={() => props.onFind()} />
          </Show>
          <PageControls at={page().at} pages={page().pages} onPage={(n) => props.onPage(n)} />
        </>
      }
    />
  );
}
