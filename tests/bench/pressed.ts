import type { Page } from 'playwright-core';
import { REST, touch } from './throttled.ts';

/** From the release of a press to the paint in which `there` stands, ms. */
export async function pressed(page: Page, selector: string, there: string): Promise<number> {
  await page.locator(selector).first().waitFor();
  await page.waitForTimeout(REST);
  await page.evaluate((css) => {
    const kept = window as unknown as { shown: Promise<number> };
    kept.shown = new Promise((shown) => {
      const from = (e: PointerEvent): void => {
        const look = (): number =>
          requestAnimationFrame(() => {
            if (document.querySelector(css) === null) return void look();
            const channel = new MessageChannel();
            channel.port1.onmessage = () => shown(performance.now() - e.timeStamp);
            channel.port2.postMessage(null);
          });
        look();
      };
      addEventListener('pointerup', from, { capture: true, once: true });
    });
  }, there);
  await touch(page, selector);
  return page.evaluate(() => (window as unknown as { shown: Promise<number> }).shown);
}
