import { chromium } from 'playwright-core';
import { chromiumPath, FLAGS } from '../browser/harness/chromium.ts';
import { serve } from '../../src/serve/serve.ts';
import { START_PAGE, toBulk } from './begin-at.ts';

export interface MovedTimes {
  readonly readings: number;
  /** Milliseconds from the release of the press that takes a reading to the paint of the moved hour. */
  readonly p50: number;
  readonly worst: number;
}

/** A dough as warm and as cold by turns, so that each reading moves the hour. */
const READINGS = ['285', '205', '275', '215', '285', '205', '275', '215', '285', '205'];

/** Readings of a bulk's dough on the built app, slowed by `throttle`. */
export async function pressToMoved(site: string, throttle: number): Promise<MovedTimes> {
  const server = await serve({ dir: site });
  const browser = await chromium.launch({ executablePath: await chromiumPath(), args: [...FLAGS] });
  try {
    const context = await browser.newContext({
      viewport: { width: 1280, height: 800 },
      hasTouch: true,
    });
    const page = await context.newPage();
    await page.goto(server.url);
    await page.locator(START_PAGE).waitFor();
    await toBulk(page);
    const session = await context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: throttle });
    await page.evaluate('globalThis.__name = (f) => f');
    const tap = async (selector: string): Promise<void> => {
      const wanted = page.locator(selector).first();
      await wanted.waitFor();
      await page.waitForTimeout(900);
      const { x, y, width, height } = (await wanted.boundingBox())!;
      await page.touchscreen.tap(x + width / 2, y + height / 2);
      await page.waitForTimeout(700);
    };
    const times: number[] = [];
    for (const digits of READINGS) {
      await tap('.control:has-text("New reading")');
      for (const digit of digits) await tap(`.key:text-is("${digit}")`);
      await page.evaluate(() => {
        const ends = () =>
          document.querySelector('.bench-times')?.textContent.match(/\d+:\d\d$/)?.[0];
        const before = ends();
        const kept = window as unknown as { moved: Promise<number> };
        kept.moved = new Promise((moved) => {
          const from = (e: PointerEvent): void => {
            const look = (): void => {
              if (ends() === before) return void requestAnimationFrame(look);
              const channel = new MessageChannel();
              channel.port1.onmessage = () => moved(performance.now() - e.timeStamp);
              channel.port2.postMessage(null);
            };
            requestAnimationFrame(look);
          };
          addEventListener('pointerup', from, { capture: true, once: true });
        });
      });
      await tap(`.reading-which .control:has-text("${digits.slice(0, 2)}.${digits[2]}")`);
      times.push(
        await page.evaluate(() => (window as unknown as { moved: Promise<number> }).moved),
      );
    }
    const sorted = times.toSorted((a, b) => a - b);
    return {
      readings: sorted.length,
      p50: sorted[Math.floor(sorted.length / 2)]!,
      worst: sorted.at(-1)!,
    };
  } finally {
    await browser.close();
    await server.close();
  }
}
