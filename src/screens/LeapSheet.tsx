import { Show, type JSX } from 'solid-js';
import { bench } from '../core/speech/words/bench.ts';
import { controls } from '../core/speech/words/controls.ts';
import { leapt } from '../core/speech/words/leapt.ts';
import { fill } from '../core/speech/fill.ts';
import { Control } from '../parts/Control.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import type { House, Leaps } from './house.ts';
import { leapLength } from './LeapNotice.tsx';

/** The clock went back, which is told; or ahead at once, asleep or set: only the baker knows. */
export default function LeapSheet(props: {
  readonly house: House;
  readonly which: keyof Leaps;
  readonly onClose: () => void;
}): JSX.Element {
  const read = (): void => {
    props.house.leapRead(props.which);
    props.onClose();
  };
  const set = (): void => {
    void props.house.clockWasWrong();
    props.onClose();
  };
  return (
    <Show when={props.house.leaps()[props.which]}>
      {(leap) => (
        <Show
          when={props.which === 'ahead'}
          fallback={
            <Sheet title={fill(leapt.backTitle, leapLength(leap().by))}>
              <p>{leapt.backThen}</p>
              <p>{leapt.backHours}</p>
              <Control label={bench.close} onPress={read} />
            </Sheet>
          }
        >
          <Sheet title={fill(leapt.title, leapLength(leap().by))}>
            <p>{leapt.sleptThen}</p>
            <p>{fill(leapt.setThen, leapLength(leap().by))}</p>
            <div class="sheet-grid">
              <Control label={controls.backToBench} onPress={() => props.onClose()} />
              <Control label={leapt.slept} onPress={read} />
              <Control label={leapt.set} disabled={!props.house.holds} onPress={set} />
            </div>
          </Sheet>
        </Show>
      )}
    </Show>
  );
}
