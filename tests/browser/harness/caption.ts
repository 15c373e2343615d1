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

/** Of a line's height, what stands empty over its letters and under the longest of them: Overpass, measured. */
const OVER = 0.1;
const UNDER = 0.14;
/** Nearer than this to a letter a border looks like a part of it, px. */
const TOUCHING = 2;

/**
 * The lines that the caption's edges, or what it covers above itself, touch or cut: letters that stand on a
 * border are not read.
 */
export async function captionCuts(page: Page): Promise<readonly string[]> {
  await settled(page);
  return page.evaluate(
    ([over, under, touching]) => {
      const caption = document.querySelector<HTMLElement>('.caption[data-seen]');
      const box = caption?.getBoundingClientRect();
      if (!caption || !box || document.querySelector('.sheet')) return [];
      const rise = parseFloat(caption.style.getPropertyValue('--rise')) || 0;
      // What it covers above itself has no border that could touch anything.
      const covers = caption.dataset['place'] === 'words' ? rise : 0;
      const edge = box.top - covers + (covers > 0 ? touching! : 0);
      const words = document.createTreeWalker(
        document.querySelector('.bench')!,
        NodeFilter.SHOW_TEXT,
      );
      // Of words that are read on only whole lines are in sight.
      const foot = document.querySelector('.bench-words')!.getBoundingClientRect().bottom + 1;
      const found: string[] = [];
      const range = document.createRange();
      for (let node = words.nextNode(); node !== null; node = words.nextNode()) {
        if (caption.contains(node)) continue;
        range.selectNodeContents(node);
        for (const { top, bottom, left, right, height } of range.getClientRects())
          if (
            left < box.right &&
            right > box.left &&
            (bottom - under! * height <= foot || !node.parentElement!.closest('.bench-words')) &&
            ((top + over! * height < edge && bottom - under! * height > edge - touching!) ||
              (top + over! * height < box.bottom + touching! &&
                bottom - under! * height > box.bottom))
          )
            found.push(`${node.textContent}: ${(edge - bottom + under! * height).toFixed(1)} px`);
      }
      return found;
    },
    [OVER, UNDER, TOUCHING],
  );
}
