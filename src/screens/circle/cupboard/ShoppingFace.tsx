import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import { pageOf } from '../../../core/circle/cupboard.ts';
import { shopping as words } from '../../../core/speech/words/cupboard.ts';
import { Control } from '../../../parts/Control.tsx';
import { Pressable } from '../../../parts/Pressable.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import { CupboardPage } from './CupboardPage.tsx';
import { PAGE, pagedName, PageControls } from './PageControls.tsx';
import type { BuyView } from './shopping-view.ts';

/** What is to be bought, each to be ticked when it is; what was ticked stays in sight and can be unticked. */
export function ShoppingFace(props: {
  /** What is shown: what lacks, and what was ticked here. */
  readonly lines: readonly BuyView[];
  /** Of what loaves, and what is not in it. */
  readonly told: readonly string[];
  /** What is in the making, and what there is enough of. */
  readonly notes: readonly string[];
  readonly bought: (id: string) => boolean;
  readonly back: string;
  readonly onTick: (id: string) => void;
  /** Other days, paper, a copy, and the whole sum. */
  readonly onMore: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [at, setAt] = createSignal(0);
  const page = createMemo(() => pageOf(props.lines, PAGE, at()));
  return (
    <CupboardPage
      wide
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={pagedName(words.title, page())}>
          <p class="cupboard-told cupboard-top">{unbroken(props.told.join(' '))}</p>
          <Show when={props.lines.length === 0 && props.notes.length > 0}>
            <p class="cupboard-told">{words.nothing}</p>
          </Show>
          <div class="cupboard-grid" role="group" aria-label={words.title}>
            <For each={page().shown}>
              {(line) => (
                <Pressable
                  class="cupboard-entry cupboard-tick"
                  fresh={line.id}
                  chosen={props.bought(line.id)}
                  onPress={() => props.onTick(line.id)}
                >
                  <b>{unbroken(line.name)}</b>
                  <i class="cupboard-box" aria-hidden="true" />
                  <span>
                    <b>{unbroken(line.much)}</b>
                    <Show when={line.doubt}>{(doubt) => <> {doubt()}</>}</Show>
                  </span>
                </Pressable>
              )}
            </For>
          </div>
          <For each={props.notes}>{(note) => <p class="cupboard-told">{unbroken(note)}</p>}</For>
        </Words>
      }
      controls={
        <>
          <Control label={words.more} onPress={() => props.onMore()} />
          <PageControls at={page().at} pages={page().pages} onPage={setAt} />
        </>
      }
    />
  );
}
