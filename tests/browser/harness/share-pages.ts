import type { Baker } from './baker.ts';
import { back, press, to, turned, type PageStep } from './page-step.ts';

const SHEET =
  'Ingredient;Gramm;Note;Price\nStrong wheat flour;900;;\nWhole rye flour;100;;\nWater;750;;\nLevain;200;;\nSea salt;20;;\nSoaked pumpkin seeds;150;;\nToasted hazelnuts, whole;80;;\n';

/** The input is hidden: what presses it is looked for in vain by a hand that chooses a file. */
const chosen = (baker: Baker): Promise<void> =>
  baker.page.locator('input[type=file]').setInputFiles({
    name: 'kitchen sheet.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(SHEET),
  });

/** A formula in and out, from the start page on. */
export const SHARE_PAGES: readonly PageStep[] = [
  {
    name: 'share, a formula out',
    async go(baker) {
      await baker.page.locator('.start-grid').waitFor();
      await press(baker, ['Book of formulas', 'Cherry and hazelnut', 'More', 'In and out']);
      await baker.page.locator('button:has-text("Bench sheet")').waitFor();
    },
  },
  {
    name: 'share, the link and its code',
    async go(baker) {
      await press(baker, ['Link and code', 'Show the code']);
      await baker.page.locator('.share-code').waitFor();
    },
  },
  to('share, the link', 'Close'),
  back('share, a sheet for the bench', 1, 'Bench sheet'),
  {
    name: 'share, all out and files in',
    async go(baker) {
      // The slab there prints.
      await press(baker, ['In and out']);
      for (let n = 0; n < 2; n++) await turned(baker, '.slab:visible');
      await press(baker, ['In and out']);
    },
  },
  to('share, a file to take in', 'Take in a file'),
  {
    name: 'share, what is in each column',
    async go(baker) {
      await chosen(baker);
      await baker.page.locator('h1:has-text("What is in each column?")').waitFor();
    },
  },
  {
    name: 'share, what is what',
    async go(baker) {
      await turned(baker, '.slab:has-text("It’s right")');
      await baker.page.locator('h1:has-text("What is what?")').waitFor();
    },
  },
  {
    name: 'share, whose percent',
    async go(baker) {
      await turned(baker, '.slab:has-text("It’s right")');
    },
  },
  to('share, how wet', 'The bowl’s flour'),
  to('share, how it keeps', '100 %'),
  to('share, to be kept', 'On the shelf', 'On the shelf'),
];
