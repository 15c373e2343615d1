import { createSignal, For, Show, type JSX } from 'solid-js';
import { compareFormulas, type Compared } from '../../core/formula/compare.ts';
import type { BookEntry } from '../../core/records/book.ts';
import { bookCompare, bookLines } from '../../core/speech/words/book.ts';
import { fill } from '../../core/speech/fill.ts';
import { showNumber } from '../../core/speech/numbers.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import { showPart } from '../../core/speech/show-part.ts';
import { Control } from '../../parts/Control.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { BookPage } from './BookPage.tsx';
import type { Editing } from './editing.ts';
import { EntryList } from './ListFace.tsx';
import { softWords } from '../../parts/soft-words.ts';

const plainName = (line: string): string => {
  if (line === 'water') return bookLines.water.whole;
  return line === 'levain' || line === 'salt' ? bookLines[line] : line;
};

const nameOf = ({ line, name }: Compared): string => {
  const plain = name === null ? plainName(line) : showPart(name);
  const words = line.startsWith('levainFlour:')
    ? fill(bookCompare.inLevain, { name: plain })
    : line.startsWith('soak:')
      ? fill(bookCompare.soaks, { name: plain })
      : plain;
  return words.charAt(0).toUpperCase() + words.slice(1);
};

const percent = (n: number | null): string =>
  n === null ? bookCompare.none : fill(bookLines.percent, { percent: showNumber(n) });

/** Less than this is the same on any scale, % of flour. */
const SAME = 0.05;

/** Two formulas line by line, always in % of all flour: one page has one way of counting. */
export function CompareFace(props: {
  readonly house: House;
  readonly editing: Editing;
  readonly onBack: () => void;
}): JSX.Element {
  const [other, setOther] = createSignal<string | null>(null);
  const entries = () =>
    props.house.book().filter(({ id, off }) => !off && id !== props.editing.formula().id);
  const chosen = (): BookEntry | undefined => entries().find(({ id }) => id === other());
  return (
    <Show
      when={chosen()}
      fallback={
        <BookPage
          wide
          back={showBread(props.editing.formula().name)}
          onBack={() => props.onBack()}
          words={
            <Words headline={bookCompare.ask}>
              <EntryList
                house={props.house}
                label={bookCompare.ask}
                entries={entries()}
                onPick={setOther}
              />
            </Words>
          }
        />
      }
    >
      {(entry) => (
        <BookPage
          wide
          back={showBread(props.editing.formula().name)}
          onBack={() => props.onBack()}
          words={
            <Words headline={bookCompare.title}>
              <table class="book-table book-top">
                <thead>
                  <tr>
                    <th scope="col">{softWords(bookCompare.what)}</th>
                    <th scope="col">{softWords(showBread(props.editing.formula().name))}</th>
                    <th scope="col">{softWords(showBread(entry().latest.name))}</th>
                  </tr>
                </thead>
                <tbody>
                  <For each={compareFormulas(props.editing.formula(), entry().latest)}>
                    {(row) => (
                      <tr data-differs={Math.abs(row.change) >= SAME ? '' : undefined}>
                        <th scope="row">{softWords(nameOf(row))}</th>
                        <td>{percent(row.was)}</td>
                        <td>{percent(row.is)}</td>
                      </tr>
                    )}
                  </For>
                </tbody>
              </table>
            </Words>
          }
          controls={<Control label={bookCompare.other} onPress={() => setOther(null)} />}
        />
      )}
    </Show>
  );
}
