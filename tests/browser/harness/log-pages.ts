import { NOTHING_SAID, type About } from '../../../src/core/log/about.ts';
import { makeBakeList } from '../../../src/core/log/bake-list.ts';
import type { Baker } from './baker.ts';
import { back, press, to, turned, type PageStep } from './page-step.ts';
import { putSaid } from './put-said.ts';
import { openYear, yearRows } from './year-kitchen.ts';

/** What is said of some of the year's bakes: invented. */
function saidOfYear(): Readonly<Record<string, About>> {
  const starts = makeBakeList()(yearRows()).bakes.map(({ start }) => start);
  const said: readonly Partial<About>[] = [
    { tags: ['gift', 'best'], note: 'The whole lane asked for more of it' },
    { tags: ['for the mill'] },
    { hidden: true, tags: ['test'] },
    { note: 'Too near the window.' },
  ];
  return Object.fromEntries(said.map((one, n) => [starts[n]!, { ...NOTHING_SAID, at: 0, ...one }]));
}

const typed = async ({ page }: Baker, text: string): Promise<void> => {
  await page.locator('.log-search').fill(text);
  // The keyboard of the tablet is put away.
  await page.locator('.log-search').blur();
};

/** The Log's list, and what is found in it. */
export const LOG_PAGES: readonly PageStep[] = [
  to('log, nothing baked yet', 'Log'),
  {
    name: 'log, twelve bakes of which one is hidden',
    async go(baker) {
      await openYear(baker.app);
      await baker.page.evaluate(putSaid(saidOfYear()));
      await baker.app.reopen();
      await press(baker, ['Log']);
      await baker.page.locator('.log-bake').first().waitFor();
    },
  },
  {
    name: 'log, older bakes',
    go: (baker) => press(baker, ['Older']),
  },
  to('log, which bakes', 'Find'),
  to('log, which month', 'Month'),
  back('log, which tag', 1, 'Tag'),
  back('log, how it was', 1, 'How it was'),
  to('log, those that were good', 'Good'),
  to('log, which bread', 'Bread'),
  {
    name: 'log, some of a bread',
    async go(baker) {
      await press(baker, ['Lane wheat']);
      await turned(baker, '.slab:visible');
      await baker.page.locator('.log-bake').first().waitFor();
    },
  },
  {
    name: 'log, nothing found',
    async go(baker) {
      await typed(baker, 'quince');
      await baker.page.locator('h1:has-text("No bake is like that")').waitFor();
    },
  },
  {
    name: 'log, found by a word',
    async go(baker) {
      await press(baker, ['Show all']);
      await typed(baker, 'lane');
      await baker.page.locator('h1:has-text("11"):not(:text-is("11 bakes"))').waitFor();
    },
  },
  {
    name: 'log, hidden ones shown',
    async go(baker) {
      await press(baker, ['Show all', 'Find', 'Hidden bakes']);
    },
  },
  back('log, with a hidden one', 1),
];
