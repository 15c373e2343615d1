import { createMemo, createSignal, For, type JSX } from 'solid-js';
import { rise } from '../../../core/speech/words/rise.ts';
import { Control } from '../../../parts/Control.tsx';
import { RiseChart } from '../../../parts/RiseChart.tsx';
import { Sheet } from '../../../parts/Sheet.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import type { Room } from './place-labels.ts';
import type { RiseView } from './rise-view.ts';
import { softWords } from '../../../parts/soft-words.ts';
import './RiseFace.css';

/** The same values as the chart, a line an hour, now, and a reading. */
function RiseTable(props: { readonly view: RiseView }): JSX.Element {
  return (
    <table class="rise-table">
      <caption>{rise.table.title}</caption>
      <thead>
        <tr>
          <th scope="col">{softWords(rise.table.time)}</th>
          <th scope="col">{softWords(rise.table.read)}</th>
          <th scope="col">{softWords(rise.table.likely)}</th>
          <th scope="col">{softWords(rise.table.span)}</th>
        </tr>
      </thead>
      <tbody>
        <For each={props.view.rows}>
          {(row) => (
            <tr>
              <th scope="row">{softWords(row.time)}</th>
              <td>{unbroken(row.read ?? '–')}</td>
              <td>{row.likely}</td>
              <td>{row.span}</td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}

/**
 * Chart, what may be pressed, and the table, as one page over the bench; one press brings the table up
 * where it would have to be scrolled for. `view` lays the chart out for the room its letters take.
 */
export function RisePage(props: {
  readonly view: (room?: Room) => RiseView;
  readonly alt: string;
  readonly controls: JSX.Element;
}): JSX.Element {
  const [room, setRoom] = createSignal<Room>();
  const [numbers, setNumbers] = createSignal(false);
  const view = createMemo(() => props.view(room()));
  return (
    <Sheet title={view().title}>
      <div class="rise-face" data-numbers={numbers() ? '' : undefined}>
        <RiseChart {...view()} alt={props.alt} onRoom={setRoom} />
        <div class="rise-controls">
          {props.controls}
          <Control
            label={numbers() ? rise.chart : rise.numbers}
            onPress={() => setNumbers(!numbers())}
          />
        </div>
        <div class="rise-numbers">
          <RiseTable view={view()} />
          <p class="rise-note">{rise.band}</p>
        </div>
      </div>
    </Sheet>
  );
}
