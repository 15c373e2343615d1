import { For, Show, type JSX } from 'solid-js';
import type { HandTotal } from '../../../core/circle/pick-up.ts';
import { handPrint as words, handTotals } from '../../../core/speech/words/hand-over.ts';
import { fill } from '../../../core/speech/fill.ts';
import type { HandRow } from './hand-row.ts';
import './PickUpSheet.css';

/** What stands on the paper. */
export interface SheetView {
  readonly day: string;
  readonly rows: readonly HandRow[];
  readonly totals: readonly (HandTotal & { readonly name: string })[];
  readonly loaves: string;
  /** When it was printed. */
  readonly made: string;
}

function Box(props: { readonly ticked: boolean }): JSX.Element {
  return <span class="pick-box">{props.ticked ? '✓' : ''}</span>;
}

/** A pick-up list on paper: the screen does not show it. A row is never parted between two pages. */
export function PickUpSheet(props: { readonly view: SheetView }): JSX.Element {
  return (
    <article class="pick-sheet">
      <header>
        <h1>{words.list}</h1>
        <p class="pick-day">{props.view.day}</p>
        <p>{words.private}</p>
      </header>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.when}</th>
            <th scope="col">{words.who}</th>
            <th scope="col">{words.what}</th>
            <th scope="col">{words.handed}</th>
            <th scope="col">{words.paid}</th>
          </tr>
        </thead>
        <tbody>
          <For each={props.view.rows}>
            {(row) => (
              <tr>
                <td class="pick-hour">{row.hour}</td>
                <th scope="row">{row.name}</th>
                <td>
                  <For each={row.lines}>{(line) => <p class="pick-line">{line}</p>}</For>
                  <For each={row.cautions}>{(caution) => <p class="pick-care">{caution}</p>}</For>
                  <Show when={row.toPay}>{(price) => <p>{price()}</p>}</Show>
                </td>
                <td>
                  <Box ticked={row.handed !== null} />
                </td>
                <td>
                  <Box ticked={row.paid} />
                </td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <table class="pick-totals">
        <thead>
          <tr>
            <th scope="col">{handTotals.bread}</th>
            <th scope="col">{handTotals.all}</th>
            <th scope="col">{handTotals.cut}</th>
          </tr>
        </thead>
        <tbody>
          <For each={props.view.totals}>
            {(total) => (
              <tr>
                <th scope="row">{total.name}</th>
                <td>{total.count}</td>
                <td>{total.cut > 0 ? total.cut : ''}</td>
              </tr>
            )}
          </For>
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{handTotals.all}</th>
            <td colspan="2">{props.view.loaves}</td>
          </tr>
        </tfoot>
      </table>
      <footer>
        <p>{words.warm}</p>
        <p>{words.caution}</p>
        <p>{fill(words.made, { time: props.view.made })}</p>
      </footer>
    </article>
  );
}
