import { For, type JSX } from 'solid-js';
import { shopping as words } from '../../../core/speech/words/cupboard.ts';
import { fill } from '../../../core/speech/fill.ts';
import { printPage } from '../../../parts/print-page.ts';
import type { BuyView } from './shopping-view.ts';
import './PrintedShopping.css';

export interface PrintedShoppingProps {
  readonly days: string;
  readonly lines: readonly BuyView[];
  readonly notes: readonly string[];
  readonly made: string;
}

/** The list that is taken along: on paper alone, the screen does not show it. */
function PrintedShopping(props: PrintedShoppingProps): JSX.Element {
  return (
    <article class="printed-shopping">
      <header>
        <h1>{words.title}</h1>
        <p>{props.days}</p>
      </header>
      <table>
        <thead>
          <tr>
            <td />
            <th scope="col">{words.what}</th>
            <th scope="col">{words.toBuy}</th>
            <th scope="col">{words.needed}</th>
            <th scope="col">{words.thereNow}</th>
          </tr>
        </thead>
        <tbody>
          <For each={props.lines}>
            {(line) => (
              <tr>
                <td>
                  <span class="printed-tick" />
                </td>
                <th scope="row">{line.name}</th>
                <td>{line.much}</td>
                <td>{line.needed}</td>
                <td>{line.there}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <footer>
        <For each={props.notes}>{(note) => <p>{note}</p>}</For>
        <p>{fill(words.made, { time: props.made })}</p>
      </footer>
    </article>
  );
}

/** Prints what is to be bought; a long list goes on by itself on the next page. */
export const printShopping = (props: PrintedShoppingProps): void =>
  printPage(() => <PrintedShopping {...props} />);
