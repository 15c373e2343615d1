import type { Page } from 'playwright-core';
import { toBulk, toOven } from './begin-at.ts';
import { spreadOf, type Spread } from './spread.ts';
import { REST, throttled, touch } from './throttled.ts';

type Kind = 'slab' | 'tile' | 'key' | 'hold' | 'take back' | 'sheet';

/** A press has come to rest, with all that it led to, ms. */
const DONE = 700;

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

/** What every press of these changes: the act, its hour, what is typed, what lies over it. */
const faceOf = (page: Page): Promise<string> =>
  page.evaluate(() =>
    ['.act-headline', '.slab', '.times-ends', '.pad-typed', '.sheet-title']
      .map((css) => [...document.querySelectorAll(css)].map((el) => el.textContent).join())
      .join('\n'),
  );

/** Interaction to next paint of presses of every kind on the built app, slowed by `throttle`. */
export const interactionToPaint = (
  site: string,
  throttle: number,
): Promise<readonly (readonly [kind: string, times: Spread])[]> =>
  throttled(site, throttle, async (open) => {
    const times = new Map<Kind, number[]>();
    /**
     * One press, once the screen has come to rest and what is pressed is armed. On a loaded machine the
     * screen may rest later than that and the press is dropped, as it should be: then it is pressed
     * again and only what was taken counts. Else one "take that back" too many takes back the bake.
     */
    const press = async (page: Page, kind: Kind, selector: string, hold = 0): Promise<void> => {
      for (let tries = 0; tries < 6; tries += 1) {
        await page.locator(selector).first().waitFor();
        await page.waitForTimeout(REST);
        const before = await faceOf(page);
        await drain(page);
        await touch(page, selector, hold);
        await page.waitForTimeout(DONE);
        const [...took] = await drain(page);
        for (let late = 0; late < 5 && (await faceOf(page)) === before; late += 1)
          await page.waitForTimeout(DONE);
        if ((await faceOf(page)) === before) continue;
        // Under 16 ms the browser reports nothing.
        times.set(kind, [...(times.get(kind) ?? []), Math.max(0, ...took)]);
        return;
      }
      throw new Error(`${selector} was pressed and changed nothing.`);
    };
    const back = 'button:has-text("Take that back")';

    const bulk = await open(toBulk);
    await watch(bulk);
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
    await watch(oven);
    for (let round = 0; round < 6; round += 1) {
      await press(oven, 'hold', '.hold', 1_400);
      await press(oven, 'slab', '.slab:not(.hold)');
      await press(oven, 'take back', back);
    }
    return [...times, ['all', [...times.values()].flat()] as const].map(
      ([kind, all]) => [kind, spreadOf(all)] as const,
    );
  });
