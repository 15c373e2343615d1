import { createMemo, createSignal, Show, type JSX } from 'solid-js';
import { Tape } from '../../parts/Tape.tsx';
import { Words } from '../../parts/Words.tsx';
import type { DayShown, ReadDay } from './day-shown.ts';
import { tapeView } from './tape-view.ts';

/** Before it is measured. */
const LETTERS = 60;

/** A plan as its tape, under its hour. */
export function TapeFace(props: {
  readonly day: DayShown;
  readonly read: ReadDay;
  readonly headline: string;
  readonly detail: string;
  readonly alt: string;
  /** Besides: how far from the best it is, what does not fit any more. */
  readonly note?: string | undefined;
  readonly onTouch: (key: string) => void;
}): JSX.Element {
  const [room, setRoom] = createSignal(LETTERS);
  const rows = createMemo(() => tapeView(props.day, props.read, room()));
  return (
    <div class="day-tape">
      <Words headline={props.headline}>
        <p class="day-detail">{props.detail}</p>
        <Show when={props.note}>{(note) => <p class="day-note">{note()}</p>}</Show>
        <Tape
          rows={rows()}
          alt={props.alt}
          onRoom={setRoom}
          onTouch={(key) => props.onTouch(key)}
        />
      </Words>
    </div>
  );
}
