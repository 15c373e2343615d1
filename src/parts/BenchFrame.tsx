import { createMemo, Show, type JSX } from 'solid-js';
import { Control } from './Control.tsx';
import { makeOverflow } from './overflow.ts';
import { showWholeLines } from './whole-lines.ts';
import './BenchFrame.css';
import './BenchLong.css';

export interface BenchFrameProps {
  /** What this screen is, for ears: "Bench". */
  readonly label: string;
  /** hot: the whole panel turned over. */
  readonly tone?: 'normal' | 'hot' | undefined;
  /** The ruled edge. */
  readonly edge: JSX.Element;
  /** The running time. Without it the words begin at the top. */
  readonly times?: JSX.Element;
  /** The words run over the whole width, above controls and slab; there is no ear. Wants BenchWide.css. */
  readonly wide?: boolean | undefined;
  readonly words: JSX.Element;
  /** On the press that reads on, where bigger words are longer than their place. */
  readonly further?: string | undefined;
  /** One slab, and no more. */
  readonly slab?: JSX.Element;
  /** Up to three controls: take back, say again, reading. */
  readonly controls?: JSX.Element;
  /** Ear and screen, and at most one control beside it. */
  readonly ear?: JSX.Element;
  /** Other running bakes, at most two presses. */
  readonly others?: JSX.Element;
  /** Captions, cards and notices that lie over the grid and move nothing on it. */
  readonly over?: JSX.Element;
}

/**
 * The places of the Bench: rule, times, words, three controls, ear, slab. They follow the viewport, the
 * hand (`data-hands` on the root) and the size of text (`data-text`); nothing else moves them.
 */
export function BenchFrame(props: BenchFrameProps): JSX.Element {
  const words = makeOverflow(showWholeLines);
  // Asked for more than once: each asking would draw them anew.
  const times = createMemo(() => props.times);
  const others = createMemo(() => props.others);
  return (
    <main
      class="bench"
      aria-label={props.label}
      data-tone={props.tone === 'hot' ? 'hot' : undefined}
      data-timeless={times() ? undefined : ''}
      data-others={others() ? '' : undefined}
      data-wide={props.wide ? '' : undefined}
    >
      <div class="bench-edge">{props.edge}</div>
      <Show when={times()}>
        <div class="bench-times">{times()}</div>
      </Show>
      <div
        class="bench-words"
        ref={words.box}
        data-long={words.long() ? '' : undefined}
        tabindex={words.long() ? 0 : undefined}
      >
        <div class="bench-inner" ref={words.inner}>
          {props.words}
        </div>
      </div>
      <Show when={words.long() && props.further}>
        {(further) => (
          <div class="bench-further">
            <Control label={further()} onPress={words.further} />
          </div>
        )}
      </Show>
      <div class="bench-slab">{props.slab}</div>
      <div class="bench-controls">{props.controls}</div>
      <div class="bench-ear">{props.ear}</div>
      <Show when={others()}>
        <div class="bench-others">{others()}</div>
      </Show>
      {props.over}
    </main>
  );
}
