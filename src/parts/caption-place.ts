/** Free px kept above and below a caption that stands among the words. */
const AIR = 12;

/**
 * Lays a caption where it hides nothing that it does not repeat: in the free place under the words,
 * above what is answered, listed or shown there; else on the slab's empty top; else over the end of the
 * words it repeats. Sets `data-place` (words, slab) and `--lift` for Caption.css.
 */
function place(caption: HTMLElement, bench: Element): void {
  const words = bench.querySelector('.bench-words');
  const act = words?.querySelector('.act');
  if (!words || !act || !('seen' in caption.dataset) || !caption.textContent) return;
  const more = act.querySelector('.act-more');
  const last = [...act.children].findLast((el) => el !== more);
  const foot = words.getBoundingClientRect().bottom;
  const floor = Math.min(foot, more?.getBoundingClientRect().top ?? foot);
  caption.dataset['place'] = 'words';
  caption.style.setProperty('--lift', `${foot - floor + (floor < foot ? AIR : 0)}px`);
  const free = floor - (last?.getBoundingClientRect().bottom ?? floor);
  if (caption.offsetHeight + 2 * AIR <= free) return;
  const label = bench.querySelector('.slab-label')?.getBoundingClientRect().top ?? 0;
  caption.dataset['place'] = 'slab';
  if (caption.getBoundingClientRect().bottom > label) caption.dataset['place'] = 'words';
}

/** Keeps a caption in its place, whatever is said, shown or turned. Gives what ends it. */
export function keepPlace(caption: HTMLElement): () => void {
  const bench = caption.closest('.bench');
  // A page without a layout has no places.
  if (!bench || typeof ResizeObserver === 'undefined') return () => {};
  const again = (): void => place(caption, bench);
  const sizes = new ResizeObserver(again);
  const shown = new MutationObserver(again);
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
  };
}
