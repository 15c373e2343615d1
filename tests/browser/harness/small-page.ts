import { expect } from 'vitest';
import type { App } from './open-app.ts';
import { settled } from './settled.ts';

/** The wide tablet's screen at a zoom of 200 %: what text twice as big leaves of it. */
export const ZOOMED = { width: 640, height: 400 } as const;

/**
 * Nothing of a page is lost in a small window: nothing runs over sideways, every word keeps inside its
 * control, and each control can be brought under a finger, by scrolling or by *Read on*.
 */
export async function checkSmallPage(app: App, at: string): Promise<void> {
  const before = app.page.viewportSize()!;
  await app.page.setViewportSize(ZOOMED);
  await app.turn(200);
  await settled(app.page);
  const found = await app.page.evaluate(() => {
    const sheets = [...document.querySelectorAll<HTMLElement>('[aria-modal="true"]')];
    const page: ParentNode = sheets.at(-1) ?? document;
    const presses = [...page.querySelectorAll<HTMLElement>('button')].filter(
      (el) => el.checkVisibility({ visibilityProperty: true }) && !el.closest('[hidden]'),
    );
    const nameOf = (el: Element): string => el.textContent.trim();
    const runsOut = (el: Element): boolean => {
      const range = document.createRange();
      range.selectNodeContents(el);
      const [words, box] = [range.getBoundingClientRect(), el.getBoundingClientRect()];
      return words.right > box.right + 0.5 || words.bottom > box.bottom + 0.5;
    };
    const outOfReach = (el: HTMLElement): boolean => {
      el.scrollIntoView({ block: 'nearest' });
      // Told of it at once: what stands in part there is hidden.
      el.closest('.bench-words, .sheet')?.dispatchEvent(new Event('scroll'));
      const { left, top, right, bottom } = el.getBoundingClientRect();
      const hit = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
      return !el.contains(hit);
    };
    return {
      presses: presses.length,
      wide: document.documentElement.scrollWidth - innerWidth,
      runsOut: presses.filter(runsOut).map(nameOf),
      outOfReach: presses.filter(outOfReach).map(nameOf),
    };
  });
  expect.soft(found.presses, `${at}: something to press`).toBeGreaterThan(0);
  expect
    .soft({ wide: found.wide, runsOut: found.runsOut, outOfReach: found.outOfReach }, at)
    .toEqual({ wide: 0, runsOut: [], outOfReach: [] });
  await app.page.setViewportSize(before);
  await app.turn(50);
}
