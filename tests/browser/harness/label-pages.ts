import type { Baker } from './baker.ts';
import { back, press, to, turned, type PageStep } from './page-step.ts';

const shows = (baker: Baker, words: string): Promise<number> =>
  baker.page.locator(`button:has-text("${words}")`).count();

/** The first of those that say so: it is in sight, where the last may be read on to. */
const first = (words: string): string => `button:has-text("${words}")`;

/** Everything that keeps a label of a bread from being made, as a baker with plain packets has it. */
export async function answerAll(baker: Baker): Promise<void> {
  while ((await shows(baker, 'packet not read')) > 0) {
    await turned(baker, first('packet not read'));
    await press(baker, ['None of them']);
    await turned(baker, '.slab:visible');
  }
  while ((await shows(baker, 'made of what?')) > 0) {
    await turned(baker, first('made of what?'));
    await press(baker, ['Just itself']);
  }
}

/** Labels, from the start page: of one bread that nobody ordered, and all that is asked of it. */
export const LABEL_PAGES: readonly PageStep[] = [
  {
    name: 'start, to the labels',
    go: (baker) => baker.page.locator('.start-grid').waitFor(),
  },
  {
    name: 'labels, of which bake',
    async go(baker) {
      await press(baker, ['Bread circle']);
      await baker.page.locator('.circle-grid').waitFor();
      await press(baker, ['Labels']);
      await baker.page.locator('h1:has-text("Labels for which")').waitFor();
    },
  },
  to('labels, of which bread', 'One bread'),
  to('labels, of cheese bread, to be answered', 'Cheese and seed'),
  to('labels, list and paper', 'List and paper'),
  to('labels, the baker’s lines', 'Your lines'),
  back('labels, what is asked', 2, 'Cheese and seed'),
  {
    name: 'labels, what a packet names',
    go: (baker) => turned(baker, first('packet not read')),
  },
  {
    name: 'labels, what it is made of',
    async go(baker) {
      await press(baker, ['None of them']);
      await turned(baker, '.slab:visible');
      await turned(baker, first('made of what?'));
    },
  },
  {
    name: 'labels, within how many days',
    async go(baker) {
      await press(baker, ['Just itself']);
      await answerAll(baker);
      await press(baker, ['Eat within how many']);
    },
  },
  {
    name: 'labels, as it will be printed',
    go: (baker) => turned(baker, '.tile:has-text("2 days")'),
  },
  to('labels, what is in it', 'What is in it'),
  back('labels, to print', 2),
];
