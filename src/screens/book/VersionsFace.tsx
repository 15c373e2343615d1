import { createSignal, For, Show, type JSX } from 'solid-js';
import type { BookVersion } from '../../core/records/book.ts';
import { bookVersions } from '../../core/speech/words/book.ts';
import { fill } from '../../core/speech/fill.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import { Control } from '../../parts/Control.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { BookPage } from './BookPage.tsx';
import type { Editing } from './editing.ts';
import { linesOf } from './lines.ts';
import { unusual } from './unusual.ts';
import { Warnings } from './Warnings.tsx';
import { lineName, lineValue, madeHow } from './words.ts';
import { softWords } from '../../parts/soft-words.ts';

/** All that a formula ever was, the latest first; one is read, and brought back as the next version. */
export function VersionsFace(props: {
  readonly house: House;
  readonly editing: Editing;
  /** Brought back: it is written already. */
  readonly onBrought: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [at, setAt] = createSignal<BookVersion | null>(null);
  const versions = () => props.editing.entry()?.versions.toReversed() ?? [];
  const latest = () => props.editing.entry()?.versions.at(-1);
  const told = (one: BookVersion): string => {
    const since =
      one.at === null
        ? bookVersions.first
        : fill(bookVersions.since, { date: props.house.date(one.at) });
    const baked = props.editing.entry()?.baked;
    return [
      one === latest() ? bookVersions.now : since,
      ...(baked?.version === one.formula.version
        ? [fill(bookVersions.baked, { date: props.house.date(baked.at) })]
        : []),
    ].join(', ');
  };
  const back = async ({ formula }: BookVersion): Promise<void> => {
    if ((await props.house.keepFormula(formula)) !== null) props.onBrought();
  };
  const units = () => props.house.ways();
  return (
    <Show
      when={at()}
      fallback={
        <BookPage
          wide
          back={showBread(props.editing.formula().name)}
          onBack={() => props.onBack()}
          words={
            <Words headline={bookVersions.title}>
              <div class="book-grid book-list book-top">
                <For each={versions()}>
                  {(one) => (
                    <Control
                      label={fill(bookVersions.line, { version: one.formula.version })}
                      value={told(one)}
                      onPress={() => setAt(one)}
                    />
                  )}
                </For>
              </div>
            </Words>
          }
        />
      }
    >
      {(one) => (
        <BookPage
          wide
          back={bookVersions.title}
          onBack={() => setAt(null)}
          words={
            <Words
              headline={fill(bookVersions.old, {
                name: showBread(one().formula.name),
                version: one().formula.version,
              })}
              detail={madeHow(one().formula)}
            >
              <Warnings of={unusual(one().formula, units())} />
              <table class="book-table book-top">
                <tbody>
                  <For each={linesOf(one().formula, props.editing.scaled().dough)}>
                    {(line) => (
                      <tr>
                        <th scope="row">{softWords(lineName(one().formula, line.key))}</th>
                        <td>{lineValue(line, units())}</td>
                      </tr>
                    )}
                  </For>
                </tbody>
              </table>
            </Words>
          }
          controls={
            <Show when={one() !== latest() && props.house.holds}>
              <Control
                label={bookVersions.back}
                value={fill(bookVersions.backThen, { version: props.editing.next() })}
                onPress={() => void back(one())}
              />
            </Show>
          }
        />
      )}
    </Show>
  );
}
