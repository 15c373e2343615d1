import { onCleanup, onMount, Show, type JSX } from 'solid-js';
import { controls } from '../core/speech/words/controls.ts';
import { Control } from './Control.tsx';
import { focusBefore, giveBack } from './focus-owed.ts';
import { makeOverflow } from './overflow.ts';
import { showWholeLines } from './whole-lines.ts';
import './Sheet.css';

/**
 * A page laid over the bench: a title, what it holds, and the way back among it. The focus goes into
 * it, stays in it, and returns to where it was. What is longer than the screen is read on by single
 * presses, as on the bench.
 */
export function Sheet(props: {
  readonly title: string;
  /** hot: the whole panel turned over. */
  readonly tone?: 'hot' | undefined;
  /** The title is for ears only: what the sheet holds has its own headline. */
  readonly headless?: boolean;
  readonly children: JSX.Element;
}): JSX.Element {
  let sheet!: HTMLElement;
  const words = makeOverflow(showWholeLines);
  const before = focusBefore();
  const stay = (e: FocusEvent): void => {
    // Of two sheets the upper one holds the focus.
    if ([...document.querySelectorAll('.sheet')].at(-1) !== sheet) return;
    if (e.target instanceof Node && !sheet.contains(e.target)) sheet.focus();
  };
  onMount(() => {
    sheet.focus({ preventScroll: true });
    document.addEventListener('focusin', stay);
  });
  onCleanup(() => {
    document.removeEventListener('focusin', stay);
    giveBack(before);
  });
  return (
    <section
      class="sheet"
      data-tone={props.tone}
      role="dialog"
      aria-modal="true"
      aria-label={props.title}
      tabindex={-1}
      data-long={words.long() ? '' : undefined}
      ref={(el) => {
        sheet = el;
        words.box(el);
      }}
    >
      <div class="sheet-inner" ref={words.inner}>
        <Show when={!props.headless}>
          <h1 class="sheet-title">{props.title}</h1>
        </Show>
        {props.children}
      </div>
      <Show when={words.long()}>
        <div class="sheet-further">
          <Control label={controls.readOn} onPress={words.further} />
        </div>
      </Show>
    </section>
  );
}
