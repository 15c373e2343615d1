import { back, keyed, to, type PageStep } from './page-step.ts';

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
  back('book, a filling to add', 2, 'Add a filling'),
  to('book, a filling by name', 'By another name'),
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
];
