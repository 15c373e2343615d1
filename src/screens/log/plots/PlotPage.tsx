import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import type { Chart } from '../../../core/log/drawing.ts';
import { logPlots as words } from '../../../core/speech/words/log-plots.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Drawn } from '../../../parts/Drawn.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import { LogPage } from '../LogPage.tsx';
import { softWords } from '../../../parts/soft-words.ts';
import './Plots.css';

/** Rows of a table that stand on a page in plain words. */
const ROWS = 4;

/** A page of some, and how many pages there are; `count` is 1 where there is nothing. */
export interface Paged {
  readonly at: number;
  readonly count: number;
}

/** Where a list's page is, held within those there are. */
export const pagedBy = (length: number, each: number, at: number): Paged => {
  const count = Math.max(1, Math.ceil(length / each));
  return { at: Math.min(at, count - 1), count };
};

function Turns(props: {
  readonly paged: Paged;
  readonly on: string;
  readonly before: string;
  readonly onTurn: (at: number) => void;
}): JSX.Element {
  return (
    <Show when={props.paged.count > 1}>
      <Control
        label={props.before}
        disabled={props.paged.at === 0}
        onPress={() => props.onTurn(props.paged.at - 1)}
      />
      <Control
        label={props.on}
        disabled={props.paged.at === props.paged.count - 1}
        onPress={() => props.onTurn(props.paged.at + 1)}
      />
    </Show>
  );
}

function PlotTable(props: { readonly chart: Chart; readonly paged: Paged }): JSX.Element {
  const rows = () => props.chart.table.rows.slice(props.paged.at * ROWS).slice(0, ROWS);
  return (
    <table class="plot-table">
      <thead>
        <tr>
          <For each={props.chart.table.heads}>
            {(head) => <th scope="col">{softWords(head)}</th>}
          </For>
        </tr>
      </thead>
      <tbody>
        <For each={rows()}>
          {([first, ...cells]) => (
            <tr>
              <th scope="row">{softWords(first!)}</th>
              <For each={cells}>{(cell) => <td>{softWords(cell)}</td>}</For>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}

/** One plot over the whole width, or the table of the same values in its place, and what it says aloud. */
export function PlotPage(props: {
  readonly title: string;
  readonly detail: string;
  /** Over its table, where there is more to say. */
  readonly tableDetail?: string | undefined;
  /** In place of the chart where there is nothing to draw. */
  readonly none: string | null;
  readonly chart: Chart;
  /** Which of the older bakes are shown. */
  readonly paged: Paged;
  readonly onPaged: (at: number) => void;
  readonly back: string;
  readonly onBack: () => void;
  readonly onSay: (text: string) => void;
}): JSX.Element {
  const [asTable, setAsTable] = createSignal(false);
  const [row, setRow] = createSignal(0);
  const rows = createMemo(() => pagedBy(props.chart.table.rows.length, ROWS, row()));
  const title = (): string => {
    const { at, count } = asTable() ? rows() : props.paged;
    return count > 1 ? fill(words.page, { name: props.title, n: at + 1, count }) : props.title;
  };
  return (
    <LogPage
      wide
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <div class="plot">
          <h1 class="act-headline">{unbroken(title())}</h1>
          <p class="plot-told">{unbroken(asTable() ? (props.tableDetail ?? '') : props.detail)}</p>
          <Show
            when={props.none === null}
            fallback={<p class="plot-none">{unbroken(props.none!)}</p>}
          >
            <Show
              when={asTable()}
              fallback={<Drawn draw={(room) => props.chart.draw(room)} alt={props.chart.says} />}
            >
              <PlotTable chart={props.chart} paged={rows()} />
            </Show>
          </Show>
        </div>
      }
      controls={
        <Show when={props.none === null}>
          <Control
            label={asTable() ? words.chart : words.table}
            onPress={() => setAsTable(!asTable())}
          />
          <Control label={words.say} onPress={() => props.onSay(props.chart.says)} />
          <Show
            when={asTable()}
            fallback={
              <Turns
                paged={props.paged}
                before={words.later}
                on={words.older}
                onTurn={(at) => {
                  setRow(0);
                  props.onPaged(at);
                }}
              />
            }
          >
            <Turns paged={rows()} before={words.rowsBefore} on={words.moreRows} onTurn={setRow} />
          </Show>
        </Show>
      }
    />
  );
}
