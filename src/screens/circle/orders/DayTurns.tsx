import { createSignal, For, Show, type JSX } from 'solid-js';
import type { DayKey } from '../../../core/circle/day-key.ts';
import { bench } from '../../../core/speech/words/bench.ts';
import { doughPage } from '../../../core/speech/words/circle-dough.ts';
import { roomPage } from '../../../core/speech/words/circle-oven.ts';
import { shopping } from '../../../core/speech/words/cupboard.ts';
import { handOver } from '../../../core/speech/words/hand-over.ts';
import { labelPage } from '../../../core/speech/words/label.ts';
import { orderPage } from '../../../core/speech/words/orders.ts';
import { showDay } from '../../../core/speech/show-day.ts';
import { Control } from '../../../parts/Control.tsx';
import { Sheet } from '../../../parts/Sheet.tsx';
import type { Face, FaceProps } from '../face.ts';

interface Turn {
  readonly label: string;
  readonly face: Face;
  /** What comes next on the day itself, or before it: it stands on the page, the others behind a press. */
  readonly next?: 'that day' | 'before';
}

const turnsOf = (day: DayKey): readonly Turn[] => [
  { label: doughPage.title, face: { at: 'dough', day }, next: 'before' },
  { label: shopping.title, face: { at: 'shopping', day } },
  { label: roomPage.title, face: { at: 'room', day, from: showDay(day) } },
  { label: labelPage.title, face: { at: 'labels', day } },
  {
    label: handOver.open,
    face: { at: 'hand over', day, from: showDay(day) },
    next: 'that day',
  },
];

/** Presses on a bake day's page to what else is done with it. */
export function DayTurns(
  props: Pick<FaceProps, 'onOpen'> & { readonly day: DayKey; readonly today: DayKey },
): JSX.Element {
  const [more, setMore] = createSignal(false);
  const now = (): Turn['next'] => (props.day > props.today ? 'before' : 'that day');
  const turns = (first: boolean) =>
    turnsOf(props.day).filter(({ next }) => (next === now()) === first);
  const presses = (first: boolean): JSX.Element => (
    <For each={turns(first)}>
      {({ label, face }) => <Control label={label} onPress={() => props.onOpen(face)} />}
    </For>
  );
  return (
    <>
      {presses(true)}
      <Control label={orderPage.more} onPress={() => setMore(true)} />
      <Show when={more()}>
        <Sheet title={showDay(props.day)}>
          <div class="sheet-grid">
            <Control label={bench.close} onPress={() => setMore(false)} />
            {presses(false)}
          </div>
        </Sheet>
      </Show>
    </>
  );
}
