import type { Page } from 'playwright-core';
import { toBulk } from './begin-at.ts';
import { spreadOf, type Spread } from './spread.ts';
import { REST, throttled, touch } from './throttled.ts';

/** A dough as warm and as cold by turns, so that each reading moves the hour. */
const READINGS = ['285', '205', '275', '215'];
const ROUNDS = 5;

/** Watches for the hour the countdown ends at to be another, from the next touch lifted. */
const watch = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const ends = () => document.querySelector('.times-ends')?.textContent;
    const before = ends();
    const kept = window as unknown as { moved: Promise<number> };
    kept.moved = new Promise((moved) => {
      const from = (e: PointerEvent): void => {
        // Told of a change, it adds nothing to the frames before: asked in each it did.
        const told = new MutationObserver(() => {
          if (ends() === before) return;
          told.disconnect();
          requestAnimationFrame(() => {
            const channel = new MessageChannel();
            channel.port1.onmessage = () => moved(performance.now() - e.timeStamp);
            channel.port2.postMessage(null);
          });
        });
        told.observe(document.body, { childList: true, subtree: true, characterData: true });
      };
      addEventListener('pointerup', from, { capture: true, once: true });
    });
  });

/**
 * From the release of the press that takes a reading of a bulk's dough to the paint of the moved hour,
 * on the built app, slowed by `throttle`. The first is cold: nothing of it has run before.
 */
export const pressToMoved = (site: string, throttle: number): Promise<Spread> =>
  throttled(site, throttle, async (open) => {
    const page = await open(toBulk);
    const tap = async (selector: string): Promise<void> => {
      await page.locator(selector).first().waitFor();
      await page.waitForTimeout(REST);
      await touch(page, selector);
    };
    const times: number[] = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      for (const digits of READINGS) {
        await tap('.control:has-text("New reading")');
        for (const digit of digits) await tap(`.key:text-is("${digit}")`);
        await watch(page);
        await tap(`.reading-which .control:has-text("${digits.slice(0, 2)}.${digits[2]}")`);
        times.push(
          await page.evaluate(() => (window as unknown as { moved: Promise<number> }).moved),
        );
      }
    }
    return spreadOf(times);
  });
