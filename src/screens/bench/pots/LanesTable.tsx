import { For, type JSX } from 'solid-js';
import type { LoadPlan } from '../../../core/oven/lanes.ts';
import { potsPage } from '../../../core/speech/words/pots-page.ts';
import type { Read } from './lanes-view.ts';
import { softWords } from '../../../parts/soft-words.ts';

/** The same values as the lanes, a line a loaf, pot after pot. */
export function LanesTable(props: { readonly plan: LoadPlan; readonly read: Read }): JSX.Element {
  return (
    <table class="pots-table">
      <thead>
        <tr>
          <th scope="col">{softWords(potsPage.columns.loaf)}</th>
          <th scope="col">{softWords(potsPage.columns.load)}</th>
          <th scope="col">{softWords(potsPage.columns.lid)}</th>
          <th scope="col">{softWords(potsPage.columns.out)}</th>
        </tr>
      </thead>
      <For each={props.plan.lanes}>
        {(lane) => (
          <tbody>
            <tr>
              <th scope="rowgroup" colspan={4}>
                {props.read.pot(lane.pot)}
              </th>
            </tr>
            <For each={lane.turns}>
              {(turn) => (
                <tr>
                  <th scope="row">{softWords(props.read.number(turn.loaf))}</th>
                  <td>{props.read.hour(turn.loadAt)}</td>
                  <td>{turn.lidAt === null ? '–' : props.read.hour(turn.lidAt)}</td>
                  <td>{props.read.hour(turn.outAt)}</td>
                </tr>
              )}
            </For>
          </tbody>
        )}
      </For>
    </table>
  );
}
