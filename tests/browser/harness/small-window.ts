import { expect } from 'vitest';
import type { App } from './open-app.ts';
import { settled } from './settled.ts';

/** A small window, and the three tablets' arrangements at a zoom of 200 %. */
export const WINDOWS = [
  { width: 600, height: 400 },
  { width: 640, height: 400 },
  { width: 410, height: 590 },
] as const;

/**
 * Nothing is lost in a small window: slab and take-back stand whole in it, nothing lies over them, and
 * words that are too long are read on to their last line by single presses.
 */
export async function checkSmall(
  app: App,
  at: string,
  size: { readonly width: number; readonly height: number },
): Promise<void> {
  await app.page.setViewportSize(size);
  await app.turn(1_100);
  // After this the words know whether they are too long.
  await settled(app.page);
  const found = await app.page.evaluate(() => {
    const whole = (el: Element | null | undefined): boolean => {
      if (!el) return false;
      const { left, top, right, bottom } = el.getBoundingClientRect();
      const hit = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
      const inside =
        left >= 0 && top >= 0 && right <= innerWidth + 0.5 && bottom <= innerHeight + 0.5;
      return inside && right - left > 60 && bottom - top > 40 && el.contains(hit);
    };
    const back = [...document.querySelectorAll('.bench-controls .control')][0];
    const out = [...document.querySelectorAll('.control, .slab')].filter((el) => {
      const range = document.createRange();
      range.selectNodeContents(el);
      const [words, box] = [range.getBoundingClientRect(), el.getBoundingClientRect()];
      return words.right > box.right + 0.5 || words.bottom > box.bottom + 0.5;
    });
    const words = document.querySelector('.bench-words')!;
    return {
      slab: whole(document.querySelector('.slab')),
      first: whole(back),
      wide: document.documentElement.scrollWidth - innerWidth,
      out: out.map((el) => el.textContent),
      long: words.hasAttribute('data-long'),
      further: whole(document.querySelector('.bench-further .control')),
      rings: document.querySelector('.call') !== null,
      lost: words.scrollHeight - words.clientHeight > 4 && !words.hasAttribute('data-long'),
    };
  });
  expect.soft(found, at).toMatchObject({ slab: true, first: true, wide: 0, out: [], lost: false });
  if (!found.long) return;
  expect.soft(found.further, `${at}: read on`).toBe(true);
  // A touch would only silence it.
  if (found.rings) return;
  const end = () =>
    app.page.evaluate(() => {
      const words = document.querySelector('.bench-words')!;
      return words.scrollTop + words.clientHeight >= words.scrollHeight - 1;
    });
  for (let n = 0; n < 8 && !(await end()); n++) {
    await app.page.locator('.bench-further .control').tap();
    await app.turn(1_100);
  }
  expect.soft(await end(), `${at}: read to the end`).toBe(true);
}
