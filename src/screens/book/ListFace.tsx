import { createMemo, For, Show, type JSX } from 'solid-js';
import type { BookEntry } from '../../core/records/book.ts';
import { book } from '../../core/speech/words/book.ts';
import { share } from '../../core/speech/words/share.ts';
import { start } from '../../core/speech/words/start.ts';
import { fill } from '../../core/speech/fill.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import { Control } from '../../parts/Control.tsx';
import { Pressable } from '../../parts/Pressable.tsx';
import { Words } from '../../parts/Words.tsx';
import type { BookPictures } from '../book-pictures.ts';
import type { House } from '../house.ts';
import { BookPage } from './BookPage.tsx';
import { kindsOf, madeHow } from './words.ts';
import { softWords } from '../../parts/soft-words.ts';
import './Picture.css';

/** How a bread is made, and when it was baked last or that something of it is half changed. */
function howTold(house: House, { id, baked, latest }: BookEntry): string {
  const how = madeHow(latest);
  if (id in house.drafts()) return fill(book.how, { how, baked: book.changed });
  if (baked === null) return how;
  return fill(book.how, { how, baked: fill(book.baked, { date: house.date(baked.at) }) });
}

/** Breads to press, each with what it is of, how it is made and when it was baked last. */
export function EntryList(props: {
  readonly house: House;
  readonly pictures?: BookPictures | null;
  readonly label: string;
  readonly entries: readonly BookEntry[];
  readonly onPick: (id: string) => void;
}): JSX.Element {
  const ids = createMemo(() => props.entries.map(({ id }) => id), undefined, {
    equals: (a, b) => a.join('\n') === b.join('\n'),
  });
  const entryOf = (id: string) => props.entries.find((one) => one.id === id);
  return (
    <div class="book-grid book-list book-top" role="group" aria-label={props.label}>
      <For each={ids()}>
        {(id) => (
          <Show when={entryOf(id)}>
            {(entry) => (
              <Pressable class="book-entry" fresh={id} onPress={() => props.onPick(id)}>
                <Show when={props.pictures?.shown()[id]}>
                  {(from) => <img class="picture-small" src={from()} alt="" />}
                </Show>
                <b>{softWords(showBread(entry().latest.name))}</b>
                <span>{softWords(kindsOf(entry().latest))}</span>
                <span>{howTold(props.house, entry())}</span>
              </Pressable>
            )}
          </Show>
        )}
      </For>
    </div>
  );
}

/** The Book as it opens; `away`: those that were taken off its list. */
export function ListFace(props: {
  readonly house: House;
  readonly pictures: BookPictures | null;
  readonly away: boolean;
  readonly onPick: (id: string) => void;
  readonly onAway: () => void;
  readonly onShare: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const entries = () => props.house.book().filter(({ off }) => off === props.away);
  const anyAway = () => props.house.book().some(({ off }) => off);
  return (
    <BookPage
      wide
      back={props.away ? book.title : start.title}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={props.away ? book.away : book.title}
          detail={!props.away ? undefined : anyAway() ? book.awayDetail : book.awayNone}
        >
          <EntryList
            house={props.house}
            pictures={props.pictures}
            label={book.title}
            entries={entries()}
            onPick={(id) => props.onPick(id)}
          />
        </Words>
      }
      controls={
        <Show when={!props.away}>
          <Control label={share.title} onPress={() => props.onShare()} />
          <Show when={anyAway()}>
            <Control label={book.away} onPress={() => props.onAway()} />
          </Show>
        </Show>
      }
    />
  );
}
