import { createMemo, For, Show, type JSX } from 'solid-js';
import type { Ingredient } from '../../../core/circle/circle.ts';
import { foundIn, knownAs, pageOf } from '../../../core/circle/cupboard.ts';
import { cupboard } from '../../../core/speech/words/cupboard.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Pressable } from '../../../parts/Pressable.tsx';
import { softWords } from '../../../parts/soft-words.ts';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import { TakeBack } from '../orders/TakeBack.tsx';
import { CupboardPage } from './CupboardPage.tsx';
import { PAGE, pagedName, PageControls } from './PageControls.tsx';
import type { Store } from './store.ts';
import { begun, thereTold } from './words.ts';

/** What is in the cupboard, page by page. `sought`: words of a name that it is narrowed to. */
export function ListFace(props: {
  readonly store: Store;
  readonly sought: string;
  /** Which page. */
  readonly at: number;
  readonly onPage: (at: number) => void;
  /** One was just taken off it: that can be taken back here. */
  readonly dropped: boolean;
  readonly back: string;
  readonly onPick: (id: string) => void;
  readonly onFind: () => void;
  readonly onAll: () => void;
  readonly onAdd: (name: string) => void;
  readonly onBack: () => void;
}): JSX.Element {
  const found = createMemo(() => foundIn(props.store.ingredients(), props.sought));
  const page = createMemo(() => pageOf(found(), PAGE, props.at));
  const isKnown = (): boolean => knownAs(found(), props.sought) !== null;
  const name = (): string =>
    props.sought === '' ? cupboard.list : fill(cupboard.found, { name: props.sought });
  const none = (): string | undefined =>
    found().length === 0 ? fill(cupboard.foundNone, { name: props.sought }) : undefined;
  const isLow = ({ id }: Ingredient): boolean => props.store.there(id).grams === 0;
  return (
    <CupboardPage
      wide
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={pagedName(name(), page())} detail={none()}>
          <div class="cupboard-grid cupboard-top" role="group" aria-label={cupboard.list}>
            <For each={page().shown}>
              {(one) => (
                <Pressable
                  class="cupboard-entry"
                  fresh={one.id}
                  onPress={() => props.onPick(one.id)}
                >
                  <b>{softWords(begun(one.name))}</b>
                  <span data-low={isLow(one) ? '' : undefined}>
                    {unbroken(thereTold(props.store.there(one.id), props.store.house.ways()))}
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
            <Control label={cupboard.find} onPress={() => props.onFind()} />
          </Show>
          <Show when={props.dropped}>
            <TakeBack house={props.store.house} circle={props.store.circle} />
          </Show>
          <PageControls at={page().at} pages={page().pages} onPage={(n) => props.onPage(n)} />
        </>
      }
    />
  );
}
