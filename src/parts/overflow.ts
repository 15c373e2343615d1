import { createSignal, onCleanup, onMount, type Accessor } from 'solid-js';
import type { showWholeLines } from './whole-lines.ts';

export interface Overflow {
  /** On the box that shows, and on the one inside it that may be longer. */
  readonly box: (el: HTMLElement) => void;
  readonly inner: (el: HTMLElement) => void;
  /** Whether there is more than the box shows, where the box scrolls at all. */
  readonly long: Accessor<boolean>;
  /** One boxful further, and from the end back to the beginning. */
  readonly further: () => void;
}

/** A tight last line's letters reach this far, px, past its box: no reason to read on. */
const INK = 4;
/** Left free over what is read on to, px. */
const AIR = 4;

/** How far down the presses and rows begin that the foot of a box cuts (whole-lines.ts), px: they come whole next. */
const cutHere = (box: HTMLElement): readonly number[] => {
  const { top, bottom } = box.getBoundingClientRect();
  return [...box.querySelectorAll('[data-cut]')]
    .map((one) => one.getBoundingClientRect())
    .filter((one) => one.bottom > bottom)
    .map((one) => one.top - top - AIR)
    .filter((down) => down > AIR);
};

/**
 * Words that do not fit are read on by single presses, for wet hands do not drag. `onLong` is told
 * whenever that may have changed, and how far was read.
 */
export function makeOverflow(onLong?: typeof showWholeLines): Overflow {
  const [long, setLong] = createSignal(false);
  let box!: HTMLElement;
  let inner!: HTMLElement;
  const measure = (): void => {
    // The press that reads on takes room of its own: whether it is wanted is asked without it.
    const was = box.hasAttribute('data-long');
    const at = box.scrollTop;
    box.removeAttribute('data-long');
    const is =
      getComputedStyle(box).overflowY === 'auto' &&
      box.scrollHeight > Math.ceil(box.clientHeight) + INK;
    if (was) {
      box.setAttribute('data-long', '');
      box.scrollTop = at;
    }
    setLong(is);
    onLong?.(box, inner, is);
  };
  onMount(() => {
    if (typeof ResizeObserver === 'undefined') return;
    const observer = new ResizeObserver(measure);
    observer.observe(box);
    observer.observe(inner);
    const scrolled = (): void => onLong?.(box, inner, long());
    box.addEventListener('scroll', scrolled);
    onCleanup(() => {
      observer.disconnect();
      box.removeEventListener('scroll', scrolled);
    });
  });
  return {
    box: (el) => (box = el),
    inner: (el) => (inner = el),
    long,
    further: () => {
      const end = box.scrollHeight - box.clientHeight;
      // A line stays in sight, so that the eye finds its place again.
      const step = Math.min(box.clientHeight * 0.8, ...cutHere(box));
      box.scrollTop = box.scrollTop >= end - 1 ? 0 : box.scrollTop + step;
    },
  };
}
