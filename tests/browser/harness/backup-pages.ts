import type { Baker } from './baker.ts';
import { chosen, harbourRows, savedLog } from './other-file.ts';
import { press, turned, type PageStep } from './page-step.ts';
import { withYear, yearRows } from './year-kitchen.ts';

const choose = (name: string, text: () => string): PageStep => ({
  name,
  async go(baker) {
    const before = await baker.page.locator('.act').innerText();
    await baker.page.locator('input[type=file]').setInputFiles(chosen(text()));
    await baker.page.waitForFunction(
      (words) => document.querySelector<HTMLElement>('.act')?.innerText !== words,
      before,
    );
  },
});
const toTablet = async (baker: Baker): Promise<void> => {
  await baker.tap('.bench-controls .control:has-text("Kitchen")');
  await press(baker, ['This tablet']);
};

/** Saving all of it, and what a file is told to bring, over a year of bakes. */
export const BACKUP_PAGES: readonly PageStep[] = [
  withYear('start, a year baked'),
  {
    name: 'save as a file, names ticked',
    async go(baker) {
      await toTablet(baker);
      await press(baker, ['Save as a file', 'Names and voices']);
    },
  },
  {
    name: 'save as a file, the sheet saved',
    async go(baker) {
      await Promise.all([
        baker.page.waitForEvent('download'),
        turned(baker, 'button:has-text("Readings as a sheet")'),
      ]);
      await baker.page.locator('button:has-text("saved")').waitFor();
    },
  },
  {
    name: 'read a saved file, one that was cut',
    async go(baker) {
      await turned(baker, '.slab:visible');
      await press(baker, ['Read a saved file']);
      await choose('', () => savedLog(yearRows()).slice(0, 9_999)).go(baker);
    },
  },
  choose('read a saved file, one that was changed', () =>
    savedLog(harbourRows(2)).replace('bake-1', 'bake-2'),
  ),
  choose('read a saved file, another tablet’s', () => savedLog(harbourRows(2))),
  choose('read a saved file, with circle and notes', () =>
    savedLog(harbourRows(3), {
      circle: [{ circle: 'neighbours', row: { id: 'b', name: 'N 1', watch: [] } }],
      keepsakes: [{ erased: { start: 'harbour-1', id: 'a' } }],
    }),
  ),
  choose('read a saved file, all here', () => savedLog(yearRows())),
];
