import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import { pageOf } from '../../../core/circle/cupboard.ts';
import type { DayKey } from '../../../core/circle/day-key.ts';
import { cupboard, shopping as words } from '../../../core/speech/en/cupboard.ts';
import { fill } from '../../../core/speech/fill.ts';
import { shown } from '../../../core/speech/facts.ts';
import { Control } from '../../../parts/Control.tsx';
import { Pressable } from '../../../parts/Pressable.tsx';
import { Words } from '../../../parts/Words.tsx';
import { CupboardPage } from './CupboardPage.tsx';
import { PageControls } from './PageControls.tsx';
import { printShopping } from './PrintedShopping.tsx';
import type { ShoppingList } from './shopping-list.ts';
import { daysTold, listText, notesOf, type BuyView } from './shopping-view.ts';
import type { Store } from './store.ts';

const PAGE = 6;

/** What is to be bought, each to be ticked when it is; what was ticked stays in sight and can be unticked. */
export function ShoppingFace(props: {
  readonly store: Store;
  readonly list: ShoppingList;
  readonly day: DayKey | null;
  /** What is shown: what lacks, and what was ticked here. */
  readonly lines: readonly BuyView[];
  readonly bought: (id: string) => boolean;
  readonly back: string;
  readonly onTick: (id: string) => void;
  readonly onDays: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [at, setAt] = createSignal(0);
  const [told, setTold] = createSignal<string | null>(null);
  const page = createMemo(() => pageOf(props.lines, PAGE, at()));
  const notes = createMemo(() => notesOf(props.list, (id) => props.bought(id)));
  const toBuy = () => props.lines.filter(({ id }) => !props.bought(id));
  const detail = (): string => {
    const { loaves } = props.list;
    if (told() !== null) return told()!;
    if (loaves === 0) return props.list.begun > 0 ? words.nothing : words.noOrders;
    const days = fill(words.forDays, { days: daysTold(props.day), ...shown({ loaves }) });
    const { at: n, pages } = page();
    const which = pages > 1 ? `${fill(cupboard.page, { n: n + 1, count: pages })}.` : null;
    const what = toBuy().length === 0 ? words.nothing : (which ?? words.tick);
    return `${days} ${what}`;
  };
  const copy = async (): Promise<void> => {
    try {
      const sheets = await props.store.house.sheets();
      const done = await sheets.copy(listText(props.day, toBuy()));
      setTold(done ? words.copied : words.notCopied);
    } catch {
      setTold(words.notCopied);
    }
  };
  const print = (): void => {
    const { house } = props.store;
    const made = `${house.date(house.now())} ${house.hour(house.now())}`;
    printShopping({ days: daysTold(props.day), lines: toBuy(), notes: notes(), made });
  };
  return (
    <CupboardPage
      wide
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={words.title} detail={detail()}>
          <div
            class="cupboard-grid cupboard-ticks cupboard-top"
            role="group"
            aria-label={words.title}
          >
            <For each={page().shown}>
              {(line) => (
                <Pressable
                  class="cupboard-entry cupboard-tick"
                  fresh={line.id}
                  chosen={props.bought(line.id)}
                  onPress={() => props.onTick(line.id)}
                >
                  <i class="cupboard-box" aria-hidden="true" />
                  <b>{line.name}</b>
                  <span class="cupboard-much">{line.much}</span>
                  <span>{line.why}</span>
                </Pressable>
              )}
            </For>
          </div>
          <Show when={notes().length > 0}>
            <ul class="cupboard-notes">
              <For each={notes()}>{(note) => <li>{note}</li>}</For>
            </ul>
          </Show>
        </Words>
      }
      controls={
        <>
          <Control label={words.other} onPress={() => props.onDays()} />
          <Show when={toBuy().length > 0}>
            <Control label={words.print} onPress={print} />
            <Control label={words.copy} onPress={() => void copy()} />
          </Show>
          <PageControls at={page().at} pages={page().pages} onPage={setAt} />
        </>
      }
    />
  );
}
