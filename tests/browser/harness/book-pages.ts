import { back, keyed, press, to, turned, type PageStep } from './page-step.ts';
import { photograph } from './photograph.ts';

/** The Book, from the start page: its list, a formula and each page that opens out of it. */
export const BOOK_PAGES: readonly PageStep[] = [
  {
    name: 'start, to the Book',
    async go(baker) {
      await baker.page.locator('.start-grid').waitFor();
    },
  },
  to('book, the list', 'Book of formulas'),
  to('book, a formula', 'Cherry and hazelnut'),
  to('book, which percent', 'Salt'),
  to('book, a line', 'Of all flour'),
  keyed('book, a line keyed', '2.8'),
  back('book, changed and unusual', 1),
  to('book, the swaps of a filling', 'Toasted hazelnuts', 'Swap it'),
  back('book, a line in grams', 2, 'Salt', 'By weight'),
  back('book, a flour to add', 1, 'Add a flour'),
  to('book, a flour by name', 'Another one'),
  back('book, a flour of the list', 1, 'barley flour'),
  to('book, a flour’s line', 'Barley flour'),
  to('book, about a flour', 'About it'),
  to('book, of which grain', 'Its grain'),
  back('book, a flour’s name', 1, 'Its name'),
  back('book, about a filling', 3, 'Dried cherries', 'About it'),
  to('book, counted of what', 'Percent of what?'),
  to('book, counted of the dough', 'Of the dough'),
  to('book, water to soak in', 'Water to soak in'),
  back('book, what a packet names', 1, 'Allergens'),
  to('book, none of them', 'None of them'),
  to('book, which nuts', 'tree nuts'),
  to('book, a nut named', 'walnut'),
  back('book, the other names', 1, 'The other names'),
  back('book, a filling counted of the dough', 2),
  back('book, how much', 1, 'How much?'),
  to('book, all the dough', 'All the dough'),
  keyed('book, a dough of three bowls, keyed', '8500'),
  back('book, how much, three bowls', 1),
  to('book, bowl by bowl', 'Bowl by bowl'),
  back('book, flour that is left', 1, 'Flour that is left'),
  keyed('book, flour that is left, keyed', '1450'),
  back('book, how much, by flour', 1),
  back('book, the steps', 1, 'Its steps'),
  to('book, a step', 'Rest'),
  back('book, the folds', 1, 'Folds'),
  to('book, a fold', 'Wait for the sheet'),
  back('book, where the filling goes in', 1, 'The filling goes in'),
  back('book, the shaping', 2, 'Shaping'),
  back('book, the last rise', 1, 'Last rise'),
  back('book, what it is baked in', 1, 'Baked in'),
  to('book, baked on a stone', 'Hot stone'),
  to('book, baked in a tin', '230'),
  {
    name: 'book, the steps changed',
    async go(baker) {
      await baker.tap('.slab');
      await press(baker, ['Last rise', 'Warm']);
      await turned(baker, '.slab:visible');
    },
  },
  back('book, a filling to add', 1, 'Add a filling'),
  to('book, a filling by name', 'Another one'),
  back('book, what a filling is like', 1),
  back('book, more', 2, 'More'),
  to('book, to compare with', 'Compare with'),
  to('book, compared', 'Olive and seed'),
  back('book, the name', 1, 'More', 'Its name'),
  back('book, notes', 1, 'More', 'Notes'),
  {
    name: 'book, kept',
    async go(baker) {
      await baker.tap('.slab');
      await baker.noted(() => baker.tap('.slab:has-text("Keep it")'));
      await baker.page.locator('.slab:has-text("That’s it")').waitFor();
    },
  },
  to('book, versions', 'More', 'Versions'),
  to('book, an old version', 'Version 1'),
  back('book, off the list, asked', 2, 'More', 'Off the list'),
  {
    name: 'book, one off the list',
    async go(baker) {
      await baker.noted(() => baker.press('Yes, off the list'));
      await baker.page.locator('.book-list').waitFor();
    },
  },
  to('book, off the list', 'Off the list'),
  back('book, no picture', 1, 'Olive and seed', 'More', 'Its picture'),
  {
    name: 'book, a picture',
    async go(baker) {
      const [name, mimeType] = ['IMG_0001.jpg', 'image/jpeg'];
      const buffer = await photograph(baker.page);
      await baker.page.locator('input[type=file]').last().setInputFiles({ name, mimeType, buffer });
      await baker.page.locator('.picture-large').waitFor();
    },
  },
  {
    name: 'book, no picture of that',
    async go(baker) {
      const [name, mimeType] = ['words.txt', 'text/plain'];
      await baker.page
        .locator('input[type=file]')
        .last()
        .setInputFiles({ name, mimeType, buffer: Buffer.from('Flour, water, salt') });
      await baker.page.locator('.act-care').waitFor();
    },
  },
  back('book, a formula with its picture', 1),
  back('book, the list with a picture', 1),
];
