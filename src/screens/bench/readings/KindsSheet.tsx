import { For, type JSX } from 'solid-js';
import { controls } from '../../../core/speech/words/controls.ts';
import { reading } from '../../../core/speech/words/readings.ts';
import { Control } from '../../../parts/Control.tsx';
import { Pressable } from '../../../parts/Pressable.tsx';
import { Sheet } from '../../../parts/Sheet.tsx';
import { softWords } from '../../../parts/soft-words.ts';
import { kindsAt, type Kind } from './kinds.ts';
import type { ReadingPage } from './page.ts';
import './readings.css';

/** What may be measured: what makes sense now first and stronger, the rest after it. */
export default function KindsSheet(props: {
  readonly stage: string;
  readonly onTurn: (page: ReadingPage | null) => void;
}): JSX.Element {
  const kinds = () => kindsAt(props.stage);
  const tile = (kind: Kind, strong: boolean): JSX.Element => (
    <Pressable
      class={strong ? 'reading-kind reading-now' : 'reading-kind'}
      fresh={kind.id}
      onPress={() => props.onTurn(kind.page)}
    >
      {softWords(kind.label)}
    </Pressable>
  );
  return (
    <Sheet title={reading.choose}>
      <div class="reading-kinds" role="group" aria-label={reading.choose}>
        <For each={kinds().first}>{(kind) => tile(kind, true)}</For>
        <For each={kinds().others}>{(kind) => tile(kind, false)}</For>
        <Control label={controls.backToBench} onPress={() => props.onTurn(null)} />
        <Control label={controls.readingsSoFar} onPress={() => props.onTurn({ at: 'past' })} />
      </div>
    </Sheet>
  );
}
