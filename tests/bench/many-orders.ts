import { putCircle } from '../browser/harness/put-circle.ts';
import { yearCircle } from '../browser/harness/year-circle.ts';
import { START_PAGE } from './begin-at.ts';
import { pressed } from './pressed.ts';
import { throttled } from './throttled.ts';

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
