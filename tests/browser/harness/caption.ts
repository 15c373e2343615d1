import type { Page } from 'playwright-core';
import { settled } from './settled.ts';

/** A line's box reaches this far, px, past its letters. */
const INK = 3;

/**
 * The words under the caption that it does not repeat, or that are read from afar: on the slab, a press, the
 * running time, a list, a gate, a headline, a call.
 */
export async function captionCovers(page: Page): Promise<readonly string[]> {
  await settled(page);
  return page.evaluate((ink) => {
    const caption = document.querySelector('.caption[data-seen]')?.getBoundingClientRect();
    // What lies over the whole bench lies over the caption too.
    if (!caption || document.querySelector('.sheet')) return [];
    const kept =
      '.act-headline, .call, .act-place, .slab-label, .slab-then, .control, .tile, .ear, .times, .lines li, .through li, .window-hours dd, .act:has(.gate-task) > :is(h1, p)';
    return [...document.querySelectorAll(kept)].flatMap((el) => {
      const range = document.createRange();
      range.selectNodeContents(el);
      // Words that are read on are in sight only within their place.
      const foot = el.closest('.bench-words')?.getBoundingClientRect().bottom ?? Infinity;
      // A large word's line is drawn deeper than the box it is laid out in.
      const rects = el.matches('.slab-label, .act-headline, .call')
        ? el.getClientRects()
        : range.getClientRects();
      const covered = [...rects].some(
        (words) =>
          words.left < caption.right &&
          words.right > caption.left &&
          words.top < foot &&
          words.top < caption.bottom - ink &&
          words.bottom > caption.top + ink,
      );
      return covered ? [el.textContent ?? ''] : [];
    });
  }, INK);
}
