import { createSignal, For, Show, type JSX } from 'solid-js';
import { shopping as words } from '../../../core/speech/words/cupboard.ts';
import { Tiles } from '../../../parts/Tiles.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { CupboardPage } from './CupboardPage.tsx';
import { printShopping } from './PrintedShopping.tsx';
import { listText, type BuyView } from './shopping-view.ts';
import { softWords } from '../../../parts/soft-words.ts';

/** Other days, the list on paper or as plain text to put elsewhere (nothing is sent), and its whole sum. */
export function ShoppingMore(props: {
  readonly house: House;
  readonly days: string;
  readonly lines: readonly BuyView[];
  readonly bought: (id: string) => boolean;
  /** What stands under it, on paper too. */
  readonly notes: readonly string[];
  readonly onDays: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [told, setTold] = createSignal<string | null>(null);
  const toBuy = () => props.lines.filter(({ id }) => !props.bought(id));
  const copy = async (): Promise<void> => {
    try {
      const sheets = await props.house.sheets();
      const done = await sheets.copy(listText(props.days, toBuy()));
      setTold(done ? words.copied : words.notCopied);
    } catch {
      setTold(words.notCopied);
    }
  };
  const print = (): void => {
    const { days, notes, house } = props;
    const made = `${house.date(house.now())} ${house.hour(house.now())}`;
    printShopping({ days, lines: toBuy(), notes, made });
  };
  const nothing = (): boolean => toBuy().length === 0;
  return (
    <CupboardPage
      wide
      back={words.title}
      onBack={() => props.onBack()}
      words={
        <Words headline={words.title} detail={told() ?? words.moreDetail}>
          <Tiles
            label={words.more}
            options={[
              { value: 'days', label: words.other, means: props.days },
              { value: 'print', label: words.print, off: nothing() },
              { value: 'copy', label: words.copy, off: nothing() },
            ]}
            onChoose={(what) => {
              if (what === 'days') props.onDays();
              else if (what === 'print') print();
              else void copy();
            }}
          />
          <Show when={props.lines.length > 0}>
            <table class="cupboard-table">
              <thead>
                <tr>
                  <th scope="col">{softWords(words.what)}</th>
                  <th scope="col">{softWords(words.needed)}</th>
                  <th scope="col">{softWords(words.thereNow)}</th>
                  <th scope="col">{softWords(words.toBuy)}</th>
                </tr>
              </thead>
              <tbody>
                <For each={props.lines}>
                  {(line) => (
                    <tr>
                      <th scope="row">{softWords(line.name)}</th>
                      <td>{unbroken(line.needed)}</td>
                      <td>{unbroken(line.there)}</td>
                      <td>{unbroken(props.bought(line.id) ? words.bought : line.much)}</td>
                    </tr>
                  )}
                </For>
              </tbody>
            </table>
          </Show>
          <For each={props.notes}>{(note) => <p class="cupboard-told">{unbroken(note)}</p>}</For>
        </Words>
      }
    />
  );
}
