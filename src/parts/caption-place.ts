import { afterPaint } from './after-paint.ts';

/** Free px kept above and below a caption that stands among the words. */
const AIR = 12;

/** Written only where it changes: each write has the whole page laid out again. */
const put = (caption: HTMLElement, place: 'words' | 'slab' | 'top'): void => {
  if (caption.dataset['place'] !== place) caption.dataset['place'] = place;
};

/**
 * Lays a caption where it hides nothing that it does not repeat: in the free place under the words,
 * above what is answered, listed or shown there; else on the slab's empty top; else over the end of the
 * words it repeats. A gate's words it never repeats: there it lies over the drawing at last. Sets
 * `data-place` (words, slab, top) and `--lift` for Caption.css.
 */
function place(caption: HTMLElement, bench: Element): void {
  const words = bench.querySelector('.bench-words');
  const act = words?.querySelector('.act');
  if (!words || !act || !('seen' in caption.dataset) || !caption.textContent) return;
  const more = act.querySelector('.act-more');
  const last = [...act.children].findLast((el) => el !== more);
  const foot = words.getBoundingClientRect().bottom;
  const floor = Math.min(foot, more?.getBoundingClientRect().top ?? foot);
  const free = floor - (last?.getBoundingClientRect().bottom ?? floor);
  put(caption, 'words');
  const lift = `${foot - floor + (floor < foot ? AIR : 0)}px`;
  if (caption.style.getPropertyValue('--lift') !== lift) caption.style.setProperty('--lift', lift);
  if (caption.offsetHeight + 2 * AIR <= free) return;
  const label = bench.querySelector('.slab-label')?.getBoundingClientRect().top ?? 0;
  put(caption, 'slab');
  if (caption.getBoundingClientRect().bottom > label)
    put(caption, bench.querySelector('.hold') ? 'top' : 'words');
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
