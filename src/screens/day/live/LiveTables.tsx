import { For, type JSX } from 'solid-js';
import type { Move } from '../../../core/day/laid/moved.ts';
import type { PlannedTouch } from '../../../core/day/plan/types.ts';
import { live as words } from '../../../core/speech/words/live.ts';
import { tellMove } from '../../../core/speech/tell-moved.ts';
import type { Instant } from '../../../core/units.ts';
import { softWords } from '../../../parts/soft-words.ts';

/** What moves: where each touch was, and where it is. `many`: of several breads each is named. */
export function MovesTable(props: {
  readonly moves: readonly Move[];
  readonly many: boolean;
  readonly time: (at: Instant) => string;
}): JSX.Element {
  return (
    <table class="live-table">
      <thead>
        <tr>
          <th scope="col">{softWords(words.columns.touch)}</th>
          <th scope="col">{softWords(words.columns.was)}</th>
          <th scope="col">{softWords(words.columns.now)}</th>
        </tr>
      </thead>
      <tbody>
        <For each={props.moves.map((move) => tellMove(move, props.time, props.many))}>
          {(line) => (
            <tr>
              <th scope="row">{softWords(line.name)}</th>
              <td>{line.was}</td>
              <td class="live-new">{line.now}</td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}

/** The touches to come, and how late each may be. */
export function AheadTable(props: {
  readonly touches: readonly PlannedTouch[];
  readonly nameOf: (touch: PlannedTouch) => string;
  readonly time: (at: Instant) => string;
}): JSX.Element {
  return (
    <table class="live-table">
      <thead>
        <tr>
          <th scope="col">{softWords(words.columns.touch)}</th>
          <th scope="col">{softWords(words.columns.when)}</th>
          <th scope="col">{softWords(words.columns.fine)}</th>
          <th scope="col">{softWords(words.columns.last)}</th>
        </tr>
      </thead>
      <tbody>
        <For each={props.touches}>
          {(touch) => (
            <tr>
              <th scope="row">{softWords(props.nameOf(touch))}</th>
              <td class="live-new">{props.time(touch.at)}</td>
              <td>{touch.frozen ? words.frozen : props.time(touch.fineUntil)}</td>
              <td>{touch.frozen ? '' : props.time(touch.lastPossible)}</td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}
