import type { JSX } from 'solid-js';
import { bench } from '../core/speech/words/bench.ts';
import { handMark } from '../core/speech/words/small.ts';
import { Control } from '../parts/Control.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import type { House } from './house.ts';
import { MarkTiles } from './MarkTiles.tsx';

/** Six marks: each child picks one, and none has a name beside it. */
export default function MarksSheet(props: {
  readonly house: House;
  readonly onClose: () => void;
}): JSX.Element {
  return (
    <Sheet title={handMark.title}>
      <p>{handMark.detail}</p>
      <MarkTiles house={props.house} />
      <Control label={bench.close} onPress={() => props.onClose()} />
    </Sheet>
  );
}
