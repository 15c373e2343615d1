import { For, type JSX } from 'solid-js';
import type { ChartTable } from '../../../core/log/drawing.ts';
import { unbroken } from '../../../parts/unbroken.ts';
import { softWords } from '../../../parts/soft-words.ts';

/** Rows under their heads; the first cell of each names it. */
export function RowsTable(props: {
  readonly table: ChartTable;
  /** For ears. */
  readonly label: string;
  /** Its rows say what they are: the heads are for ears alone. */
  readonly headless?: boolean;
}): JSX.Element {
  return (
    <table
      class="bake-table"
      aria-label={props.label}
      data-headless={props.headless ? '' : undefined}
    >
      <thead>
        <tr>
          <For each={props.table.heads}>{(head) => <th scope="col">{softWords(head)}</th>}</For>
        </tr>
      </thead>
      <tbody>
        <For each={props.table.rows}>
          {([first, ...rest]) => (
            <tr>
              <th scope="row">{softWords(first ?? '')}</th>
              <For each={rest}>{(cell) => <td>{unbroken(cell)}</td>}</For>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}
