import type { Baker } from './baker.ts';
import { LANE } from './lane-circle.ts';
import { press, to, turned, type PageStep } from './page-step.ts';
import { putCircle } from './put-circle.ts';

/** A circle is on the disk before its first page is come to. */
const start: PageStep = {
  name: 'start, to a circle that has orders',
  async go(baker: Baker) {
    await baker.page.locator('.start-grid').waitFor();
    await baker.page.evaluate(putCircle(LANE));
  },
};

/** A day's bread handed over, from the start page. */
export const HAND_PAGES: readonly PageStep[] = [
  start,
  to('circle, days that have orders', 'Bread circle'),
  to('hand-over, its bake day', 'Fri 6 Mar'),
  to('hand-over, the list', 'Hand over'),
  {
    name: 'hand-over, those to come',
    async go(baker) {
      await press(baker, ['Still to come']);
      await turned(baker, '.hand-tick:has-text("Q")');
    },
  },
  to('hand-over, all loaves', 'All loaves'),
  to('hand-over, print', 'Print the list'),
  to('hand-over, whom to tell', 'The list', 'Tell them'),
  to('hand-over, to all', 'For all'),
  to('hand-over, to one', 'For another', 'The mill'),
];
