import type { Page } from 'playwright-core';
import { putCircle } from '../browser/harness/put-circle.ts';
import { yearCircle } from '../browser/harness/year-circle.ts';
import { START_PAGE } from './begin-at.ts';
import { REST, throttled, touch } from './throttled.ts';

/** From the release of a press to the paint in which `there` stands, ms. */
async function pressed(page: Page, selector: string, there: string): Promise<number> {
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

/** Pages of the Circle with a year of orders, 2,000, from press to paint, slowed by `throttle`, ms. */
export const manyOrders = (
  site: string,
  throttle: number,
): Promise<readonly (readonly [page: string, ms: number])[]> =>
  throttled(site, throttle, async (open) => {
    const page = await open(async (its) => {
      const now = new Date();
      const day = [now.getFullYear(), now.getMonth() + 1, now.getDate()];
      const today = day.map((n) => String(n).padStart(2, '0')).join('-');
      await its.evaluate(putCircle(yearCircle(today)));
      await its.reload();
      await its.locator(START_PAGE).waitFor();
    });
    const times: (readonly [string, number])[] = [];
    const press = async (name: string, selector: string, there: string): Promise<void> => {
      times.push([name, await pressed(page, selector, there)]);
    };
    await press('first opened', '.control:has-text("Bread circle")', '.circle-home .control');
    await press('a bake day of forty', '.circle-home .control >> nth=0', '.orders-day');
    await press('who is it for', '.slab', '.orders-grid:not(.orders-day)');
    return times;
  });
