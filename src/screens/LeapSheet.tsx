import { Show, type JSX } from 'solid-js';
import { controls } from '../core/speech/en/controls.ts';
import { leapt } from '../core/speech/en/leapt.ts';
import { fill } from '../core/speech/fill.ts';
import { Control } from '../parts/Control.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import type { House } from './house.ts';
import { leapLength } from './LeapNotice.tsx';

/** The clock went ahead at once: asleep, or set. Only the baker knows. */
export default function LeapSheet(props: {
  readonly house: House;
  readonly onClose: () => void;
}): JSX.Element {
  const slept = (): void => {
    props.house.leapRead('ahead');
    props.onClose();
  };
  const set = (): void => {
    void props.house.clockWasWrong();
    props.onClose();
  };
  return (
    <Show when={props.house.leaps().ahead}>
      {(leap) => (
        <Sheet title={fill(leapt.title, leapLength(leap().by))}>
          <p>{leapt.sleptThen}</p>
          <p>{fill(leapt.setThen, leapLength(leap().by))}</p>
          <div class="sheet-grid">
            <Control label={controls.backToBench} onPress={() => props.onClose()} />
            <Control label={leapt.slept} onPress={slept} />
            <Control label={leapt.set} disabled={!props.house.holds} onPress={set} />
          </div>
        </Sheet>
      )}
    </Show>
  );
}
