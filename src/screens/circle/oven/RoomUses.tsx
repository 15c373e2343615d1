import { For, type JSX } from 'solid-js';
import { roomPage } from '../../../core/speech/words/circle-oven.ts';
import { fill } from '../../../core/speech/fill.ts';
import { unbroken } from '../../../parts/unbroken.ts';
import { useWords, type UseShown } from './room-view.ts';
import { softWords } from '../../../parts/soft-words.ts';
import './Oven.css';

/** What of a day is taken, a bar each, with its words over it. */
export const RoomBars = (props: {
  readonly date: string;
  readonly uses: readonly UseShown[];
}): JSX.Element => (
  <figure
    class="room-uses"
    role="img"
    aria-label={fill(roomPage.alt, {
      date: props.date,
      words: props.uses.map(useWords).join(' '),
    })}
  >
    <For each={props.uses}>
      {(use) => (
        <div class="room-use" aria-hidden="true">
          <p>
            <b>{use.name}</b>
            <span>{unbroken(use.value)}</span>
            <span>{use.state === null ? '' : roomPage.state[use.state]}</span>
          </p>
          <div
            class="room-bar"
            data-state={use.state ?? 'none'}
            style={{ '--share': `${(use.share ?? 0) * 100}%` }}
          >
            {use.share !== null && use.share > 0 && <i />}
          </div>
        </div>
      )}
    </For>
  </figure>
);

/** The same values in a table. */
export const RoomTable = (props: { readonly uses: readonly UseShown[] }): JSX.Element => (
  <table class="room-table">
    <thead>
      <tr>
        <For each={Object.values(roomPage.columns)}>
          {(name) => <th scope="col">{softWords(name)}</th>}
        </For>
      </tr>
    </thead>
    <tbody>
      <For each={props.uses}>
        {({ name, taken, of, left, state }) => (
          <tr>
            <th scope="row">{softWords(name)}</th>
            <td>{unbroken(taken)}</td>
            <td>{unbroken(of)}</td>
            <td>{unbroken(left)}</td>
            <td>{state === null ? '–' : roomPage.state[state]}</td>
          </tr>
        )}
      </For>
    </tbody>
  </table>
);
