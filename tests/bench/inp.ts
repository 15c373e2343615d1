import { chromium, type Page } from 'playwright-core';
import { chromiumPath, FLAGS } from '../browser/harness/chromium.ts';
import { serve } from '../../src/serve/serve.ts';
import { START_PAGE, toBulk, toOven } from './begin-at.ts';

/** Interaction to next paint of one kind of press, ms. */
export interface Inp {
  readonly kind: string;
  readonly presses: number;
  readonly p50: number;
  readonly p95: number;
  readonly worst: number;
}

type Kind = 'slab' | 'tile' | 'key' | 'hold' | 'take back' | 'sheet';

const quantile = (sorted: readonly number[], q: number): number =>
  sorted[Math.min(sorted.length - 1, Math.ceil(q * sorted.length) - 1)] ?? Number.NaN;

const rowOf = (kind: string, times: readonly number[]): Inp => {
  const sorted = times.toSorted((a, b) => a - b);
  return {
    kind,
    presses: sorted.length,
    p50: quantile(sorted, 0.5),
    p95: quantile(sorted, 0.95),
    worst: sorted.at(-1) ?? Number.NaN,
  };
};

/**
 * Watches every interaction as the browser itself times it: the longest event of one, from the
 * hardware's time stamp to the next paint, in steps of 8 ms.
 */
const watch = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const seen = new Map<number, number>();
    (window as unknown as { seen: typeof seen }).seen = seen;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as PerformanceEventTiming[]) {
        const { interactionId, duration } = entry;
        if (interactionId > 0)
          seen.set(interactionId, Math.max(seen.get(interactionId) ?? 0, duration));
      }
    }).observe({
      type: 'event',
      durationThreshold: 16,
      buffered: false,
    } as PerformanceObserverInit);
  });

const drain = (page: Page): Promise<number[]> =>
  page.evaluate(() => {
    const { seen } = window as unknown as { seen: Map<number, number> };
    const all = [...seen.values()];
    seen.clear();
    return all;
  });

/** Presses of every kind on the built app, slowed by `throttle`: one row a kind, and one of all. */
export async function interactionToPaint(site: string, throttle: number): Promise<readonly Inp[]> {
  const server = await serve({ dir: site });
  const browser = await chromium.launch({ executablePath: await chromiumPath(), args: [...FLAGS] });
  const times = new Map<Kind, number[]>();
  try {
    const open = async (begin: (page: Page) => Promise<void>): Promise<Page> => {
      const context = await browser.newContext({
        viewport: { width: 1280, height: 800 },
        hasTouch: true,
      });
      const page = await context.newPage();
      await page.goto(server.url);
      await page.locator(START_PAGE).waitFor();
      await begin(page);
      const session = await context.newCDPSession(page);
      await session.send('Emulation.setCPUThrottlingRate', { rate: throttle });
      await page.evaluate('globalThis.__name = (f) => f');
      await watch(page);
      return page;
    };
    /** One press, once the screen has come to rest and what is pressed is armed. */
    const press = async (page: Page, kind: Kind, selector: string, hold = 0): Promise<void> => {
      const wanted = page.locator(selector).first();
      await wanted.waitFor();
      await page.waitForTimeout(900);
      await drain(page);
      const { x, y, width, height } = (await wanted.boundingBox())!;
      const [left, top] = [x + width / 2, y + height / 2];
      if (hold === 0) await page.touchscreen.tap(left, top);
      else {
        await page.mouse.move(left, top);
        await page.mouse.down();
        await page.waitForTimeout(hold);
        await page.mouse.up();
      }
      await page.waitForTimeout(700);
      const [...took] = await drain(page);
      // Under 16 ms the browser reports nothing.
      times.set(kind, [...(times.get(kind) ?? []), Math.max(0, ...took)]);
    };
    const back = 'button:has-text("Take that back")';

    const bulk = await open(toBulk);
    for (let round = 0; round < 7; round += 1) {
      await press(bulk, 'sheet', '.control:has-text("New reading")');
      for (const digit of '245') await press(bulk, 'key', `.key:text-is("${digit}")`);
      await press(bulk, 'tile', '.reading-which .control:has-text("24.5")');
      await press(bulk, 'take back', back);
      await press(bulk, 'slab', '.slab');
      await press(bulk, 'tile', '.tile');
      await press(bulk, 'take back', back);
      await press(bulk, 'take back', back);
      await press(bulk, 'sheet', 'button:has-text("More")');
      await press(bulk, 'sheet', '.sheet .control:has-text("Back to the bench")');
    }
    await bulk.context().close();

    const oven = await open(toOven);
    for (let round = 0; round < 6; round += 1) {
      await press(oven, 'hold', '.hold', 1_400);
      await press(oven, 'slab', '.slab:not(.hold)');
      await press(oven, 'take back', back);
    }
    return [
      ...[...times].map(([kind, all]) => rowOf(kind, all)),
      rowOf('all', [...times.values()].flat()),
    ];
  } finally {
    await browser.close();
    await server.close();
  }
}
