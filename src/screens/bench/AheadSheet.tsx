import type { JSX } from 'solid-js';
import { controls } from '../../core/speech/words/controls.ts';
import { taskPress } from '../../core/speech/words/tasks.ts';
import { Control } from '../../parts/Control.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import type { House } from '../house.ts';
import { AheadList } from './AheadList.tsx';
import type { ReadingPage } from './readings/page.ts';

/** What may be done before it calls, as a page of its own. */
export default function AheadSheet(props: {
  readonly house: House;
  readonly bake: string;
  readonly onTurn: (page: ReadingPage | null) => void;
}): JSX.Element {
  const back = (): void => props.onTurn(null);
  return (
    <Sheet title={taskPress.aheadTitle}>
      <AheadList house={props.house} bake={props.bake} onLast={back} />
      <Control label={controls.backToBench} onPress={back} />
    </Sheet>
  );
}
