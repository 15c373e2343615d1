import { For, Show, type JSX } from 'solid-js';
import { careLines } from '../../../core/speech/words/care.ts';
import { printed } from '../../../core/speech/words/live.ts';
import { fill } from '../../../core/speech/fill.ts';
import type { PrintedPart, PrintView } from './print-view.ts';
import './PrintedDay.css';

function Part(props: { readonly part: PrintedPart }): JSX.Element {
  return (
    <section class="printed-part">
      <h2>{props.part.title}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">{printed.when}</th>
            <th scope="col">{printed.what}</th>
            <th scope="col">{printed.hands}</th>
            <th scope="col">{printed.fine}</th>
            <th scope="col">{printed.last}</th>
            <th scope="col">{printed.done}</th>
          </tr>
        </thead>
        <tbody>
          <For each={props.part.rows}>
            {(row) => (
              <tr class={row.isBread ? 'printed-bread' : undefined}>
                <td class="printed-hour">{row.hour}</td>
                <th scope="row">
                  {row.what}
                  <Show when={row.bake}>{(bake) => <small>{bake()}</small>}</Show>
                </th>
                <td>{row.minutes}</td>
                <td>{row.fine}</td>
                <td>{row.last}</td>
                <td>
                  <Show when={!row.isBread}>
                    <span class="printed-box" />
                  </Show>
                </td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </section>
  );
}

/** A plan as the page that hangs on the fridge: on paper alone, the screen does not show it. */
export function PrintedDay(props: { readonly view: PrintView }): JSX.Element {
  return (
    <article class="printed-day" data-close={props.view.close}>
      <header>
        <h1>{printed.title}</h1>
        <p>{props.view.names}</p>
      </header>
      <div class="printed-days">
        <For each={props.view.days}>{(part) => <Part part={part} />}</For>
      </div>
      <footer>
        <p>{printed.hot}</p>
        <p>{`${careLines.MITTS} ${careLines.RING}`}</p>
        <p>{careLines.RAW_DOUGH}</p>
        <p>{fill(printed.made, { time: props.view.made })}</p>
      </footer>
    </article>
  );
}
