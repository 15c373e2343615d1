import { createSignal, lazy, Show, Suspense, type JSX } from 'solid-js';
import { bench } from '../../core/speech/words/bench.ts';
import { small as words, smallAges } from '../../core/speech/words/small.ts';
import { Control } from '../../parts/Control.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { CareControl } from '../CareControl.tsx';
import type { House } from '../house.ts';
import { WaysControls } from '../WaysControls.tsx';

const SmallSheet = lazy(() => import('../SmallSheet.tsx'));

/** Whose view a bake has, ways of showing and the cautions, from the start page. */
export function WaysSheet(props: {
  readonly house: House;
  readonly onClose: () => void;
  /** What there is to do besides. */
  readonly children: JSX.Element;
}): JSX.Element {
  const [asks, setAsks] = createSignal(false);
  const whose = (): string => {
    const { small } = props.house.ways();
    return small === 'off' ? words.off : smallAges[small];
  };
  return (
    <>
      <Sheet title={bench.more}>
        <div class="sheet-grid">
          <Control label={bench.close} onPress={() => props.onClose()} />
          {props.children}
          <Control label={words.title} value={whose()} onPress={() => setAsks(true)} />
          <WaysControls house={props.house} />
          <CareControl house={props.house} />
        </div>
      </Sheet>
      <Suspense>
        <Show when={asks()}>
          <SmallSheet
            house={props.house}
            onChosen={() => setAsks(false)}
            onClose={() => setAsks(false)}
          />
        </Show>
      </Suspense>
    </>
  );
}
