import { bakedYear } from '../../machines/support/baked-year.ts';
import type { Baker } from './baker.ts';
import { back, press, to, turned, type PageStep } from './page-step.ts';
import { putRows } from './put-rows.ts';

/** When all of it is over. */
export const AFTER_YEAR = Date.UTC(2031, 4, 2, 9);
const YEAR = bakedYear({ bakes: 3, seed: 5, until: AFTER_YEAR, leftOpen: false });

/** On the Log's list, an invented year on the disk. */
const yearPut = async (baker: Baker): Promise<void> => {
  await baker.page.evaluate(putRows(YEAR));
  await baker.app.reopen();
  await baker.page.locator('.start-grid').waitFor();
  await press(baker, ['Log']);
};

/** One bake of the past, its charts, and what is handed on of it. */
export const LOG_BAKE_PAGES: readonly PageStep[] = [
  {
    name: 'log, one bake in one look',
    async go(baker) {
      await yearPut(baker);
      await press(baker, ['Cherry and hazelnut']);
      await baker.page.locator('.bake-table').waitFor();
    },
  },
  to('log, a bake’s times', 'Times'),
  to('log, a bake’s readings', 'Readings'),
  to('log, a bake’s calls', 'Calls'),
  to('log, a bake’s weights', 'Weights'),
  to('log, a bake’s loads', 'Loads'),
  {
    name: 'log, a bake’s chart',
    async go(baker) {
      await turned(baker, '.slab:visible');
      await press(baker, ['Chart']);
      await baker.page.locator('.drawn text').first().waitFor();
    },
  },
  to('log, a bake’s next chart', 'Next chart'),
  to('log, a chart as a table', 'As a table'),
  back('log, a bake to be shared', 1, 'Share it'),
];
