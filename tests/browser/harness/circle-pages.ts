import type { Baker } from './baker.ts';
import { back, press, to, turned, type PageStep } from './page-step.ts';

/** Somebody whose name is as long as one may be. */
const LONG = 'B of the little house on the harbour lane';

/** A name typed in, and taken. */
const named =
  (name: string) =>
  async (baker: Baker): Promise<void> => {
    await press(baker, ['Add one']);
    await baker.write(name);
    await turned(baker, '.slab:visible');
    await baker.page.locator('h1:has-text("Neighbours")').waitFor();
  };

/** The Circle, from the start page: those who have bread, and what is kept of them. */
export const CIRCLE_PAGES: readonly PageStep[] = [
  {
    name: 'start, to the Circle',
    go: (baker) => baker.page.locator('.start-grid').waitFor(),
  },
  {
    name: 'circle, nothing yet',
    async go(baker) {
      await press(baker, ['Bread circle']);
      await baker.page.locator('.circle-grid').waitFor();
    },
  },
  to('circle, nobody yet', 'Neighbours'),
  to('circle, somebody new', 'Add one'),
  {
    name: 'circle, a name that is taken',
    async go(baker) {
      await press(baker, ['Neighbours']);
      await named('B')(baker);
      await press(baker, ['Add one']);
      await baker.write('B');
      await baker.page.locator('.act-care').waitFor();
    },
  },
  {
    name: 'circle, neighbours',
    async go(baker) {
      await press(baker, ['Neighbours']);
      for (const name of ['C', 'D', 'The mill', LONG]) await named(name)(baker);
    },
  },
  to('circle, a neighbour', LONG.slice(0, 12)),
  to('circle, what they must not eat', 'Must not eat'),
  to('circle, which nuts', 'milk', 'sesame', 'tree nuts'),
  to('circle, a nut for somebody', 'walnut'),
  back('circle, the other names', 1, 'The other names'),
  back('circle, a neighbour with a list', 1),
  to('circle, erased for good', 'Erase for good'),
  to('circle, kept', 'Keep them'),
  back('circle, neighbours, one with a list', 1),
  back('circle, no order yet', 1),
];
