import { afterPaint } from './after-paint.ts';
import { bandsIn, clearOf } from './whole-lines.ts';

/** Free px kept above and below a caption that stands among the words. */
const AIR = 12;
/** A line's box reaches about so far past its letters, px. */
const INK = 4;
/** Of its size: whole, and, where it would lie over what it may not hide, ever less, bigger words down to plain ones. */
const SIZES = [1, 0.86, 0.72];
/** Letters that are read from afar, or that nothing else says: never under a caption. */
const KEPT = '.act-headline, .call, .act-place';
/** A caution too, where there is any other place: it is told after what stands in the caption. */
const KEPT_FIRST = `${KEPT}, .act-care`;
/** A caution's bar reaches so far over its letters, px. */
const BAR = 4;

type Spot = 'words' | 'slab' | 'top';

/** Written only where it changes: each write has the whole page laid out again. */
const put = (caption: HTMLElement, spot: Spot): void => {
  if (caption.dataset['place'] !== spot) caption.dataset['place'] = spot;
};
const set = (caption: HTMLElement, name: string, value: string): void => {
  if (caption.style.getPropertyValue(name) !== value) caption.style.setProperty(name, value);
};

/** How far up the words a caption may reach: to under what is kept there, as far as it is in sight. */
const heldDown = (words: Element, keep: string): number => {
  const { top, bottom } = words.getBoundingClientRect();
  const kept = [...words.querySelectorAll(keep)]
    .map((el) => el.getBoundingClientRect())
    .filter((box) => box.height > 0 && box.top < bottom);
  return Math.max(top, ...kept.map((box) => box.bottom + INK));
};

/** How far up from the slab it may reach: to under what is pressed or told above it. */
const slabCeiling = (bench: Element, slab: DOMRect): number => {
  const above = [
    // Words across the whole width stand over the slab, too.
    ...bench.querySelectorAll(
      '.bench-ear > *, .bench-others > *, .bench-controls > *, :scope[data-wide] > .bench-words',
    ),
    ...document.querySelectorAll('.notice'),
  ]
    .map((el) => el.getBoundingClientRect())
    .filter(({ left, right, top }) => left < slab.right && right > slab.left && top < slab.top);
  return Math.max(0, ...above.map(({ bottom }) => bottom));
};

/** Raises a caption that lies over words to the top of the line that it would cut: `--rise`, in px. */
const clearLines = (caption: HTMLElement, words: Element): void => {
  const { top } = caption.getBoundingClientRect();
  const rise = top - clearOf(bandsIn(words), top);
  set(caption, '--rise', `${rise > 0 ? rise + BAR : 0}px`);
};

/**
 * Lays a caption where it hides nothing that it does not repeat: in the free place under the words,
 * above what is answered, listed or shown there; else above the slab's word, on its empty top and what is
 * free over that; else over the end of the words it repeats, under their headline; smaller where it must, and
 * where those are its headline alone, over the end of what is shown under it. Of a gate's words it repeats
 * none but "stand back": there it lies over the drawing, over what is asked of a child, or at last over that. Sets `data-place`
 * (words, slab, top), `--lift`, `--up`, `--rise` and `--size` for Caption.css.
 */
function place(caption: HTMLElement, bench: Element): void {
  const words = bench.querySelector('.bench-words');
  const act = words?.querySelector('.act');
  if (!words || !act || !('seen' in caption.dataset) || !caption.textContent) return;
  const more = act.querySelector('.act-more');
  // What is left out for want of room stands nowhere.
  const last = [...act.children].findLast((el) => el !== more && el.getClientRects().length > 0);
  const foot = words.getBoundingClientRect().bottom;
  const asked = more?.querySelector('.small-task') ?? more;
  const floor = Math.min(foot, asked?.getBoundingClientRect().top ?? foot);
  const over = Math.min(foot, more?.getBoundingClientRect().top ?? foot);
  const free = over - (last?.getBoundingClientRect().bottom ?? over);
  const slab = bench.querySelector('.bench-slab')?.getBoundingClientRect();
  const label = (bench.querySelector('.slab-label')?.getBoundingClientRect().top ?? 0) - INK;
  const above = slab ? slabCeiling(bench, slab) + AIR : Infinity;
  const gate = bench.querySelector('.hold') !== null;
  // Of a gate's words only what is asked of a child may be hidden.
  const told = (words.querySelector('.gate-stand') ?? last)?.getBoundingClientRect().bottom ?? 0;
  const box = (): DOMRect => caption.getBoundingClientRect();
  const headline = act.querySelector('.act-headline')?.getBoundingClientRect().top ?? 0;
  const lift = foot - floor + (floor < foot ? AIR : 0);
  set(caption, '--rise', '0px');
  for (const ceiling of [KEPT_FIRST, KEPT].map((keep) => heldDown(words, keep)))
    for (const size of SIZES) {
      set(caption, '--size', `${size}`);
      set(caption, '--lift', `${lift}px`);
      put(caption, 'words');
      if (caption.offsetHeight + 2 * AIR <= free) return;
      put(caption, 'slab');
      set(caption, '--up', '0px');
      const past = box().bottom - label;
      if (past > 0) set(caption, '--up', `${past}px`);
      if (box().top >= above || past <= 0) return;
      if (gate) {
        put(caption, 'top');
        if (box().bottom <= headline) return;
        // Its drawing is small, or gone: then over what the gate asks of a child, and no word above.
        put(caption, 'words');
        for (const down of ['0px', `calc(${AIR}px - var(--gap))`]) {
          set(caption, '--lift', down);
          if (box().top >= told) return clearLines(caption, words);
        }
        continue;
      }
      put(caption, 'words');
      if (box().top >= ceiling) return clearLines(caption, words);
      // Down into the gap above the controls, where nothing stands in between.
      if (lift === 0) set(caption, '--lift', `calc(${AIR}px - var(--gap))`);
      if (box().top >= ceiling) return clearLines(caption, words);
    }
  if (gate) {
    // Over the one line that it repeats, and covers whole.
    const stand = words.querySelector('.gate-stand')?.textContent?.toLowerCase();
    put(caption, 'words');
    set(caption, '--lift', '0px');
    const clear = box().top >= (last?.getBoundingClientRect().bottom ?? 0);
    if (stand && clear && caption.textContent.toLowerCase().includes(stand))
      return clearLines(caption, words);
    return put(caption, 'top');
  }
  // Over what is shown there stand but kept words, as over a day's tape: its end is hidden sooner than they.
  set(caption, '--lift', '0px');
  const ceiling = heldDown(words, KEPT);
  for (const size of SIZES) {
    set(caption, '--size', `${size}`);
    if (box().top >= ceiling) break;
  }
  clearLines(caption, words);
}

/** Keeps a caption in its place, whatever is said, shown or turned. Gives what ends it. */
export function keepPlace(caption: HTMLElement): () => void {
  const bench = caption.closest('.bench');
  // A page without a layout has no places.
  if (!bench || typeof ResizeObserver === 'undefined') return () => {};
  const again = (): void => place(caption, bench);
  const sizes = new ResizeObserver(again);
  // What changes under a caption is painted first: to find its place again has the page laid out once more.
  let callOff = (): void => {};
  const shown = new MutationObserver(() => {
    callOff();
    callOff = afterPaint(again);
  });
  for (const css of ['.bench-words', '.bench-slab']) {
    const part = bench.querySelector(css);
    if (!part) continue;
    sizes.observe(part);
    shown.observe(part, { childList: true, subtree: true, characterData: true });
  }
  sizes.observe(caption);
  return () => {
    sizes.disconnect();
    shown.disconnect();
    callOff();
  };
}
