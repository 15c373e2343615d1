import { Show, type JSX } from 'solid-js';
import { bench } from '../core/speech/words/bench.ts';
import { leapt } from '../core/speech/words/leapt.ts';
import { shown } from '../core/speech/facts.ts';
import { fill } from '../core/speech/fill.ts';
import { MINUTE } from '../core/units.ts';
import { Notice } from '../parts/Notice.tsx';
import type { House } from './house.ts';

/** How far the clock leapt, either way, as a length. */
export const leapLength = (by: number) => shown({ minutes: Math.round(Math.abs(by) / MINUTE) });

/** The tablet's clock went back, which is told; or ahead in plain sight, which is asked about. */
export function LeapNotice(props: {
  readonly house: House;
  readonly onSay: () => void;
}): JSX.Element {
  const ahead = () => {
    const leap = props.house.leaps().ahead;
    return leap?.inSight ? leap : null;
  };
  return (
    <>
      <Show when={props.house.leaps().back}>
        {(leap) => (
          <Notice
            text={fill(leapt.back, leapLength(leap().by))}
            action={{ label: bench.close, press: () => props.house.leapRead('back') }}
          />
        )}
      </Show>
      <Show when={ahead()}>
        {(leap) => (
          <Notice
            text={fill(leapt.ahead, leapLength(leap().by))}
            action={{ label: leapt.which, press: () => props.onSay() }}
          />
        )}
      </Show>
    </>
  );
}
