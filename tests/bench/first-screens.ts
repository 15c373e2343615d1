import { chromium } from 'playwright-core';
import { chromiumPath, FLAGS } from '../browser/harness/chromium.ts';
import { serve } from '../../src/serve/serve.ts';

export interface PressTimes {
  /** Milliseconds from the release of a press to the next paint that shows it taken. */
  readonly p50: number;
  readonly p95: number;
  readonly presses: number;
}

const quantile = (sorted: readonly number[], q: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(q * sorted.length))] ?? Number.NaN;

/** Presses through the checklists and weigh cards of a bake on the built app, slowed by `throttle`. */
export async function pressToPaint(site: string, throttle: number): Promise<PressTimes> {
  const server = await serve({ dir: site });
  const browser = await chromium.launch({
    executablePath: await chromiumPath(),
    args: [...FLAGS],
  });
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    await page.goto(server.url);
    await page.locator('.start-grid').waitFor();
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
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: throttle });
    // The runner of this script wraps functions in a helper that the page does not have.
    await page.evaluate('globalThis.__name = (f) => f');
    await page.evaluate(() => {
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
    for (let i = 0; i < 26; i += 1) {
      await page.waitForTimeout(900);
      if ((await page.locator('.hold, .pad').count()) > 0) break;
      await page.locator('.slab').click();
    }
    await page.waitForTimeout(3000);
    const times = await page.evaluate(() => (window as unknown as { times: number[] }).times);
    const sorted = times.toSorted((a, b) => a - b);
    return { p50: quantile(sorted, 0.5), p95: quantile(sorted, 0.95), presses: sorted.length };
  } finally {
    await browser.close();
    await server.close();
  }
}
