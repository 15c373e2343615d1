import type { JSX } from 'solid-js';
import { bench } from '../../core/speech/words/bench.ts';
import { Sheet } from '../../parts/Sheet.tsx';
import { CareControl } from '../CareControl.tsx';
import type { House } from '../house.ts';
import { WaysControls } from '../WaysControls.tsx';
import { Control } from '../../parts/Control.tsx';

/** Ways of showing and the cautions, from the start page. */
export function WaysSheet(props: {
  readonly house: House;
  readonly onClose: () => void;
  /** What there is to do besides. */
  readonly children: JSX.Element;
}): JSX.Element {
  return (
    <Sheet title={bench.more}>
      <div class="sheet-grid">
        <Control label={bench.close} onPress={() => props.onClose()} />
        {props.children}
        <WaysControls house={props.house} />
        <CareControl house={props.house} />
      </div>
    </Sheet>
  );
}
