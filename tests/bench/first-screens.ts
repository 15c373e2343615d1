import type { Page } from 'playwright-core';
import { spreadOf, type Spread } from './spread.ts';
import { REST, throttled } from './throttled.ts';

/** From the start page to the plan, the bake's first act. */
async function toPlan(page: Page): Promise<void> {
  const settle = () => page.waitForTimeout(750);
  await settle();
  await page.locator('button.control:has-text("How warm is the kitchen?")').click();
  await settle();
  for (let i = 0; i < 2; i += 1) {
    await page.locator('.key:text-is("2")').click();
    await settle();
  }
  // On a loaded machine a press may fall into the dead time of the one before: press till it took.
  while ((await page.locator('.through').count()) === 0) {
    const sightOnly = page.locator('button.control:has-text("Sight only")');
    if ((await sightOnly.count()) > 0) await sightOnly.click();
    else await page.locator('.slab').click();
    await settle();
  }
}

const watch = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const times: number[] = [];
    (window as unknown as { times: number[] }).times = times;
    const words = () => document.querySelector('.act-headline')?.textContent ?? '';
    addEventListener(
      'pointerup',
      (e) => {
        const before = words();
        const look = () =>
          requestAnimationFrame(() => {
            if (words() === before && performance.now() - e.timeStamp < 3000) return look();
            const channel = new MessageChannel();
            channel.port1.onmessage = () => times.push(performance.now() - e.timeStamp);
            channel.port2.postMessage(null);
          });
        look();
      },
      true,
    );
  });

/**
 * From the release of a press to the next paint that shows it taken: through the checklists and weigh
 * cards of a bake on the built app, slowed by `throttle`.
 */
export const pressToPaint = (site: string, throttle: number): Promise<Spread> =>
  throttled(site, throttle, async (open) => {
    const page = await open(toPlan);
    await watch(page);
    for (let i = 0; i < 26; i += 1) {
      await page.waitForTimeout(REST);
      if ((await page.locator('.hold, .pad').count()) > 0) break;
      await page.locator('.slab').click();
    }
    await page.waitForTimeout(3000);
    return spreadOf(await page.evaluate(() => (window as unknown as { times: number[] }).times));
  });
