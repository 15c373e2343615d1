import { For, type JSX } from 'solid-js';
import { breadsPage, loadsPage } from '../../../core/speech/words/circle-oven.ts';
import type { LoadShown } from './loads-view.ts';
import type { BreadShown } from './room-view.ts';
import { softWords } from '../../../parts/soft-words.ts';
import './Oven.css';

/** Bread by bread: how many more go. */
export const BreadsTable = (props: { readonly breads: readonly BreadShown[] }): JSX.Element => (
  <table class="room-table">
    <thead>
      <tr>
        <For each={Object.values(breadsPage.columns)}>
          {(name) => <th scope="col">{softWords(name)}</th>}
        </For>
      </tr>
    </thead>
    <tbody>
      <For each={props.breads}>
        {({ name, ordered, more, binds }) => (
          <tr>
            <th scope="row">{softWords(name)}</th>
            <td>{ordered}</td>
            <td>{more}</td>
            <td>{binds}</td>
          </tr>
        )}
      </For>
    </tbody>
  </table>
);

/** Load by load: when it goes in, when it is out, and from when it is cool. */
export const LoadsTable = (props: { readonly loads: readonly LoadShown[] }): JSX.Element => (
  <table class="room-table">
    <thead>
      <tr>
        <For each={Object.values(loadsPage.columns)}>
          {(name) => <th scope="col">{softWords(name)}</th>}
        </For>
      </tr>
    </thead>
    <tbody>
      <For each={props.loads}>
        {(load) => (
          <tr>
            <td>{load.in}</td>
            <td>{load.out}</td>
            <th scope="row">{softWords(load.what)}</th>
            <td>{load.cool}</td>
          </tr>
        )}
      </For>
    </tbody>
  </table>
);
