import type { Page } from 'playwright-core';
import { putRows } from '../browser/harness/put-rows.ts';
import { START_PAGE } from './begin-at.ts';
import { pressed } from './pressed.ts';
import { spreadOf, type Spread } from './spread.ts';
import { REST, throttled } from './throttled.ts';
import { yearsLog } from './years-log.ts';

export interface ManyBakes {
  /** From the page's load to the start page, with that log, ms: unslowed, and slowed. */
  readonly opens: readonly [number, number];
  /** From a press to the paint that shows it, ms. */
  readonly presses: readonly (readonly [what: string, ms: number])[];
  /** Between two frames while the list is scrolled, ms: the calmest of three times. */
  readonly frames: Spread;
}

/** So many rows go to the page at once. */
const CHUNK = 5_000;

const timedOpen = async (page: Page): Promise<number> => {
  const began = performance.now();
  await page.reload();
  await page.locator(START_PAGE).waitFor();
  return performance.now() - began;
};

/** Frames while wheel and page presses take the list down. */
async function scrolled(page: Page): Promise<Spread> {
  const box = (await page.locator('.log-box').boundingBox())!;
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.evaluate(() => {
    const kept = window as unknown as { frames: number[]; on: boolean };
    kept.frames = [];
    kept.on = true;
    let last = performance.now();
    const look = (now: number): void => {
      kept.frames.push(now - last);
      last = now;
      if (kept.on) requestAnimationFrame(look);
    };
    requestAnimationFrame((now) => {
      last = now;
      requestAnimationFrame(look);
    });
  });
  // As quick as a flung finger: some two thousand px a second.
  for (let n = 0; n < 60; n += 1) {
    await page.mouse.wheel(0, 100);
    await page.waitForTimeout(40);
  }
  const frames = await page.evaluate(() => {
    const kept = window as unknown as { frames: number[]; on: boolean };
    kept.on = false;
    return kept.frames;
  });
  return spreadOf(frames);
}

/** The Log with so many bakes on the built app, slowed by `throttle`. */
export const manyBakes = (site: string, bakes: number, throttle: number): Promise<ManyBakes> =>
  throttled(site, throttle, async (open) => {
    let unslowed = 0;
    const page = await open(async (its) => {
      const rows = yearsLog(bakes, Date.now());
      for (let from = 0; from < rows.length; from += CHUNK)
        await its.evaluate(putRows(rows.slice(from, from + CHUNK)));
      unslowed = await timedOpen(its);
    });
    const presses: (readonly [string, number])[] = [];
    const press = async (what: string, selector: string, there: string): Promise<void> => {
      presses.push([what, await pressed(page, selector, there)]);
    };
    await page.waitForTimeout(REST);
    const log = '.control:has-text("Log")';
    await press('first opened', log, '.log-bake');
    await page.waitForTimeout(REST);
    const runs: Spread[] = [];
    for (let n = 0; n < 3; n += 1) runs.push(await scrolled(page));
    // The others may have met a busy machine.
    const frames = runs.toSorted((a, b) => a.worst - b.worst)[0]!;
    await press('older', '.control:has-text("Older")', '.log-bake');
    await press('find', '.control:has-text("Find")', '.log-grid');
    await press('which month', '.control:has-text("Month")', '.log-picks');
    await press('back', '.slab', '.log-grid:not(.log-picks)');
    await press('back to the list', '.slab', '.log-bake');
    await press('back to the start', '.slab', '.start-grid');
    await press('opened again', log, '.log-bake');
    const opens = [unslowed, await timedOpen(page)] as const;
    return { opens, presses, frames };
  });
