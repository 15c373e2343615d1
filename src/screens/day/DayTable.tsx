import { For, type JSX } from 'solid-js';
import { touchKey } from '../../core/day/plan/ics.ts';
import { dayPlan, tapeNames } from '../../core/speech/words/day.ts';
import { tellTouch } from '../../core/speech/tell-plan.ts';
import type { Instant } from '../../core/units.ts';
import { BakeMark } from '../../parts/BakeMark.tsx';
import type { House } from '../house.ts';
import type { DayShown, ReadDay } from './day-shown.ts';
import { softWords } from '../../parts/soft-words.ts';

/** The same values as the tape, a line a touch, lids and all. */
export function DayTable(props: {
  readonly house: Pick<House, 'day' | 'hour'>;
  readonly day: DayShown;
  readonly read: ReadDay;
}): JSX.Element {
  const time = (at: Instant): string => `${props.house.day(at)} ${props.house.hour(at)}`;
  const rows = () => [
    ...props.day.touches.map((touch) => ({
      key: touchKey(touch),
      at: touch.at,
      batch: touch.batch,
      name: tellTouch(touch.name),
      fine: props.house.hour(touch.fineUntil),
      last: time(touch.lastPossible),
    })),
    ...props.day.ready.map(({ batch, at }) => ({
      key: `${batch}/ready`,
      at,
      batch,
      name: tapeNames.ready as string,
      fine: '–',
      last: '–',
    })),
  ];
  return (
    <table class="day-table">
      <thead>
        <tr>
          <th scope="col">{softWords(dayPlan.columns.time)}</th>
          <th scope="col">{softWords(dayPlan.columns.what)}</th>
          <th scope="col">{softWords(dayPlan.columns.fine)}</th>
          <th scope="col">{softWords(dayPlan.columns.last)}</th>
        </tr>
      </thead>
      <tbody>
        <For each={rows().toSorted((a, b) => a.at - b.at)}>
          {(row) => (
            <tr>
              <td>{time(row.at)}</td>
              <th scope="row">
                {props.read.mark(row.batch) !== null && (
                  <BakeMark mark={props.read.mark(row.batch)!} />
                )}
                {softWords(row.name)}
              </th>
              <td>{row.fine}</td>
              <td>{row.last}</td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}
