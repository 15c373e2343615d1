import { createEffect, createSignal, For, on, type JSX } from 'solid-js';
import { Pressable } from './Pressable.tsx';
import './CountTiles.css';

export interface CountTilesProps {
  /** What is counted, for ears. */
  readonly label: string;
  /** A name for each, two to four. */
  readonly names: readonly string[];
  /** Corners of one dough, or pieces of it. */
  readonly shape: 'corner' | 'piece';
  /** When it changes all of them are to be done anew. */
  readonly fresh: unknown;
}

/** A corner of a sheet of dough: it lies open, or is folded in. */
const Corner = (): JSX.Element => (
  <>
    <path class="count-open" d="M6 6h48v48H36C20 54 6 40 6 24z" />
    <path class="count-done" d="M22 22h32v32H36C28 54 22 48 22 40zM22 22l20 20H22z" />
  </>
);
const Piece = (): JSX.Element => (
  <>
    <path class="count-open" d="M10 46c-8-16 4-32 20-32s28 16 20 32z" />
    <path
      class="count-done"
      d="M10 46c-8-16 4-32 20-32s28 16 20 32zM20 26l5 10M30 23l5 12M40 26l4 10"
    />
  </>
);

/** Something to tap for each one that is done, as the baker does it. No time, no score, and nothing waits for it. */
export function CountTiles(props: CountTilesProps): JSX.Element {
  const [done, setDone] = createSignal<readonly number[]>([]);
  createEffect(
    on(
      () => props.fresh,
      () => setDone([]),
    ),
  );
  const turn = (n: number): void => {
    setDone((all) => (all.includes(n) ? all.filter((one) => one !== n) : [...all, n]));
  };
  return (
    <div class="count-tiles" role="group" aria-label={props.label} data-shape={props.shape}>
      <For each={props.names}>
        {(name, n) => (
          <Pressable
            class="count-tile"
            name={name}
            quick
            chosen={done().includes(n())}
            onPress={() => turn(n())}
          >
            <svg viewBox="0 0 60 60" aria-hidden="true">
              {props.shape === 'corner' ? <Corner /> : <Piece />}
            </svg>
          </Pressable>
        )}
      </For>
    </div>
  );
}
