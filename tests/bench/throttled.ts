import { chromium, type CDPSession, type Page } from 'playwright-core';
import { chromiumPath, FLAGS } from '../browser/harness/chromium.ts';
import { serve } from '../../src/serve/serve.ts';
import { START_PAGE } from './begin-at.ts';

/** A fresh kitchen's page: `begin` is walked at full speed, all after it is slowed. */
export type Open = (begin: (page: Page) => Promise<void>) => Promise<Page>;

/** The built app in a browser of its own, whose pages are slowed by `throttle` once they have begun. */
export async function throttled<T>(
  site: string,
  throttle: number,
  use: (open: Open) => Promise<T>,
): Promise<T> {
  const server = await serve({ dir: site });
  const browser = await chromium.launch({ executablePath: await chromiumPath(), args: [...FLAGS] });
  try {
    return await use(async (begin) => {
      const context = await browser.newContext({
        viewport: { width: 1280, height: 800 },
        hasTouch: true,
      });
      const page = await context.newPage();
      // The runner of this script wraps functions in a helper that the page does not have.
      await page.addInitScript('globalThis.__name = (f) => f');
      await page.goto(server.url);
      await page.locator(START_PAGE).waitFor();
      await begin(page);
      const session = await context.newCDPSession(page);
      await session.send('Emulation.setCPUThrottlingRate', { rate: throttle });
      return page;
    });
  } finally {
    await browser.close();
    await server.close();
  }
}

/** The screen comes to rest and what is drawn on it is armed, ms. */
export const REST = 900;

/** A finger that taps is on the glass for so long, ms. From memory. */
const CONTACT = 80;

const fingers = new WeakMap<Page, Promise<CDPSession>>();

/** A tap as a finger makes it: down and up at one instant nobody touches. */
async function tapAt(page: Page, x: number, y: number): Promise<void> {
  const finger = fingers.get(page) ?? page.context().newCDPSession(page);
  fingers.set(page, finger);
  const session = await finger;
  const send = (type: 'touchStart' | 'touchEnd', touchPoints: { x: number; y: number }[]) =>
    session.send('Input.dispatchTouchEvent', { type, touchPoints });
  await send('touchStart', [{ x, y }]);
  await page.waitForTimeout(CONTACT);
  await send('touchEnd', []);
}

/** One touch, or one hold of so many ms, in the middle of the first thing that `selector` finds. */
export async function touch(page: Page, selector: string, hold = 0): Promise<void> {
  const { x, y, width, height } = (await page.locator(selector).first().boundingBox())!;
  const [left, top] = [x + width / 2, y + height / 2];
  if (hold === 0) return tapAt(page, left, top);
  await page.mouse.move(left, top);
  await page.mouse.down();
  await page.waitForTimeout(hold);
  await page.mouse.up();
}
