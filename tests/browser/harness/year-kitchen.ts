import type { LogRecord } from '../../../src/core/records/record.ts';
import { DAY } from '../../../src/core/units.ts';
import { bakedYear } from '../../machines/support/baked-year.ts';
import { START, type App } from './open-app.ts';
import type { PageStep } from './page-step.ts';
import { putRows } from './put-rows.ts';

/** Twelve invented bakes of the year before the browser's tests begin, each of them over. */
export const yearRows = (): readonly LogRecord[] =>
  bakedYear({ bakes: 12, seed: 5, until: START - DAY, leftOpen: false });

/** Puts this log on the disk of an app that has none, and opens the app with it. */
export async function openYear(app: App): Promise<void> {
  await app.page.evaluate(putRows(yearRows()));
  await app.reopen();
  await app.page.locator('.start-grid').waitFor();
}

/** The first step of a list of pages that begins with a year in its log. */
export const withYear = (name: string): PageStep => ({
  name,
  async go(baker) {
    await baker.page.locator('.start-grid').waitFor();
    await openYear(baker.app);
  },
});
