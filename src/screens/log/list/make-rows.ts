import { createVirtualizer } from '@tanstack/solid-virtual';
import {
  batch,
  createEffect,
  createMemo,
  createSignal,
  on,
  onCleanup,
  untrack,
  type Accessor,
} from 'solid-js';

/** Where a page has no size: of no screen. */
const PLAIN = { pitch: 165, fit: 3, letters: 34 } as const;
/** Rows that are drawn past what is in sight, each way. */
const OVERSCAN = 3;

export interface Rows<T> {
  /** What gives the rows their room, and the box in it that scrolls. */
  readonly place: (el: HTMLElement) => void;
  readonly box: (el: HTMLElement) => void;
  /** Those that are drawn, in their order; each is the same object as before. */
  readonly drawn: Accessor<readonly T[]>;
  /** Where one of these stands among all, from 0. */
  readonly at: (row: T) => number;
  /** Whole rows in sight at once, px from one to the next, and letters that have room in a line of one. */
  readonly fit: Accessor<number>;
  readonly pitch: Accessor<number>;
  readonly letters: Accessor<number>;
  readonly isFirst: Accessor<boolean>;
  readonly isLast: Accessor<boolean>;
  /** So many boxfuls on, or back. */
  readonly turn: (boxfuls: 1 | -1) => void;
  readonly toTop: () => void;
  /** The focus came to a row: it stays drawn wherever the box is scrolled to. Null: it went. */
  readonly focused: (row: T | null) => void;
  readonly onKeyDown: (e: KeyboardEvent) => void;
}

/** px of a registered length. */
const lengthOf = (el: Element, name: string): number =>
  Number.parseFloat(getComputedStyle(el).getPropertyValue(name));

/**
 * Rows of one height, of which only those in sight are drawn. As many as have room are in sight at once,
 * none of them in part: they share what height there is, and where a finger leaves the box between two it
 * goes on to the nearer. The place tells in lengths how high a row is at least (`--row-least`), what is
 * between two (`--row-gap`), what stands in one beside its words (`--row-beside`) and how wide a letter is
 * (`--row-letter`).
 *
 * @param kept where the first row in sight is kept while the rows are not shown
 */
export function makeRows<T extends object>(
  rows: Accessor<readonly T[]>,
  keyOf: (row: T) => string,
  kept: { top: number },
): Rows<T> {
  const [place, setPlace] = createSignal<HTMLElement>();
  const [box, setBox] = createSignal<HTMLElement>();
  const [pitch, setPitch] = createSignal(0);
  const [fit, setFit] = createSignal(1);
  const [letters, setLetters] = createSignal(0);
  const [top, setTop] = createSignal(kept.top);
  const [focus, setFocus] = createSignal<T | null>(null);
  /** Where the focus is about to go: drawn before it can. */
  const [next, setNext] = createSignal<T | null>(null);
  const placeOf = (row: T | null): number => (row === null ? -1 : rows().indexOf(row));
  const focusAt = createMemo(() => placeOf(focus()));
  const nextAt = createMemo(() => placeOf(next()));
  const virtual = createVirtualizer<HTMLElement, HTMLElement>({
    get count() {
      return rows().length;
    },
    get enabled() {
      return pitch() > 0;
    },
    get estimateSize() {
      const px = pitch();
      return () => px;
    },
    get getItemKey() {
      const all = rows();
      return (at: number) => keyOf(all[at] as T);
    },
    get rangeExtractor() {
      const held = [focusAt(), nextAt()].filter((at) => at >= 0);
      const count = rows().length;
      return ({ startIndex, endIndex }: { startIndex: number; endIndex: number }) => {
        const from = Math.max(0, startIndex - OVERSCAN);
        const to = Math.min(count - 1, endIndex + OVERSCAN);
        const near = Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i);
        return [...new Set([...held, ...near])].toSorted((a, b) => a - b);
      };
    },
    getScrollElement: () => box() ?? null,
  });
  const places = createMemo(() => {
    const all = rows();
    return new Map(
      virtual.getVirtualItems().flatMap(({ index }) => {
        const row = all[index];
        return row === undefined ? [] : [[row, index] as const];
      }),
    );
  });
  const drawn = createMemo(() => [...places().keys()]);
  const last = (): number => Math.max(0, rows().length - fit());
  const scrollTo = (row: number): void => {
    const its = box();
    if (its) its.scrollTop = Math.min(last(), Math.max(0, row)) * pitch();
  };

  const measure = (within: HTMLElement): void => {
    // Rounded up it would let a row reach out of the list, and a scroll stand beside whole px.
    const high = Math.floor(within.getBoundingClientRect().height);
    const gap = lengthOf(within, '--row-gap');
    const least = lengthOf(within, '--row-least');
    const hasSize = high > 0 && least > 0;
    const many = Math.floor((high + gap + 1) / (least + gap));
    const most =
      (within.clientWidth - lengthOf(within, '--row-beside')) / lengthOf(within, '--row-letter');
    const rowsAtOnce = hasSize ? Math.max(1, many) : PLAIN.fit;
    const px = hasSize ? Math.floor((high + gap) / rowsAtOnce) : PLAIN.pitch;
    const isNew = px !== pitch();
    batch(() => {
      setFit(rowsAtOnce);
      setLetters(most > 0 ? Math.floor(most) : PLAIN.letters);
      setPitch(px);
    });
    if (isNew) virtual.measure();
  };
  // Where it stood: in other words' size its rows are as high as they are now.
  createEffect(on(pitch, (px) => px > 0 && scrollTo(kept.top)));
  createEffect(() => {
    const within = place();
    if (within === undefined) return;
    untrack(() => measure(within));
    if (typeof ResizeObserver === 'undefined') return;
    const observer = new ResizeObserver(() => measure(within));
    observer.observe(within);
    onCleanup(() => observer.disconnect());
  });
  createEffect(() => {
    const its = box();
    const settle = (): void => {
      const at = (its?.scrollTop ?? 0) / untrack(pitch);
      if (Math.abs(at - Math.round(at)) * untrack(pitch) > 1) scrollTo(Math.round(at));
    };
    const scrolled = (): void => {
      const px = untrack(pitch);
      if (px > 0) setTop((kept.top = Math.max(0, Math.round((its?.scrollTop ?? 0) / px))));
    };
    // Before the rows are drawn anew: asked of it after that, the page would be laid out for the answer.
    const first = { passive: true, capture: true } as const;
    its?.addEventListener('scroll', scrolled, first);
    its?.addEventListener('scrollend', settle);
    onCleanup(() => {
      its?.removeEventListener('scroll', scrolled, first);
      its?.removeEventListener('scrollend', settle);
    });
  });

  const focusRow = (at: number): void => {
    const row = rows()[Math.min(rows().length - 1, Math.max(0, at))];
    if (row === undefined) return;
    setNext(() => row);
    const index = rows().indexOf(row);
    if (index < top()) scrollTo(index);
    else if (index >= top() + fit()) scrollTo(index - fit() + 1);
    box()
      ?.querySelector<HTMLElement>(`[data-row="${index}"] button`)
      ?.focus({ preventScroll: true });
    setNext(null);
  };
  const STEPS: Readonly<Record<string, (at: number) => number>> = {
    ArrowDown: (at) => at + 1,
    ArrowUp: (at) => at - 1,
    PageDown: (at) => at + fit(),
    PageUp: (at) => at - fit(),
    Home: () => 0,
    End: () => rows().length - 1,
  };
  /** They stand there for as long as what drew them does: where nothing is found they are gone. */
  const come = (el: HTMLElement, set: (el: HTMLElement | undefined) => void): void => {
    set(el);
    onCleanup(() => set(undefined));
  };
  return {
    place: (el) => come(el, setPlace),
    box: (el) => come(el, setBox),
    drawn,
    at: (row) => places().get(row) ?? rows().indexOf(row),
    fit,
    pitch,
    letters,
    isFirst: () => top() <= 0,
    isLast: () => top() >= last(),
    turn: (boxfuls) => scrollTo(top() + boxfuls * fit()),
    toTop: () => scrollTo(0),
    focused: (row) => void setFocus(() => row),
    onKeyDown(e) {
      const step = STEPS[e.key];
      if (step === undefined || focusAt() < 0) return;
      e.preventDefault();
      focusRow(step(focusAt()));
    },
  };
}
