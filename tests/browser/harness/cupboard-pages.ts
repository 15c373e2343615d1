import { back, keyed, last, press, to, turned, type PageStep } from './page-step.ts';

/** The store cupboard, from the start page: an ingredient with all that is kept of it, and a bread's cost. */
export const CUPBOARD_PAGES: readonly PageStep[] = [
  {
    name: 'start, to the cupboard',
    go: (baker) => baker.page.locator('.start-grid').waitFor(),
  },
  {
    name: 'cupboard, its three parts',
    async go(baker) {
      await press(baker, ['Bread circle']);
      await baker.page.locator('.circle-grid').waitFor();
      await press(baker, ['Store cupboard']);
      await baker.page.locator('.tiles').waitFor();
    },
  },
  to('cupboard, what is there', 'What you have'),
  to('cupboard, the next page', 'Next page'),
  {
    name: 'cupboard, an ingredient',
    async go(baker) {
      const wheat = last('Strong wheat flour');
      // Which page it is on is the tongue's: the list goes by what is shown.
      if ((await baker.page.locator(wheat).count()) === 0) await press(baker, ['Page before']);
      await turned(baker, wheat);
    },
  },
  to('cupboard, how much is there', 'On hand now'),
  keyed('cupboard, how much is there, keyed', '3400'),
  back('cupboard, a pack', 1, 'A pack'),
  {
    name: 'cupboard, a price',
    async go(baker) {
      await baker.key('2500');
      await turned(baker, '.slab:visible');
    },
  },
  {
    name: 'cupboard, a price of nothing',
    async go(baker) {
      await baker.key('0');
      await turned(baker, '.slab:visible');
    },
  },
  {
    name: 'cupboard, an ingredient with its price',
    async go(baker) {
      await turned(baker, '.slab:visible');
      await baker.key('3.95');
      await turned(baker, '.slab:visible');
    },
  },
  to('cupboard, how much can be used', 'You can use'),
  {
    name: 'cupboard, an ingredient of which some is left over',
    async go(baker) {
      await baker.key('82');
      await turned(baker, '.slab:visible');
    },
  },
  back('cupboard, to find or add', 1, 'Find or add'),
  {
    name: 'cupboard, what was sought and is not there',
    async go(baker) {
      await baker.write('caraway');
      await turned(baker, '.slab:visible');
    },
  },
  to('cupboard, one that is new', 'Add it'),
  back('cupboard, nothing to buy', 2, 'Shopping list'),
  to('cupboard, days and paper', 'Days, print, copy'),
  to('cupboard, which days', 'Other days'),
  back('cupboard, what breads cost', 2, 'Cost of a loaf'),
  to('cupboard, what a loaf costs', 'Lane wheat'),
  to('cupboard, how many loaves', 'Loaves'),
  back('cupboard, what counts', 1, 'What counts'),
  to('cupboard, times the cost', 'Times the cost'),
  {
    name: 'cupboard, what counts, with a number',
    async go(baker) {
      await baker.key('3');
      await turned(baker, '.slab:visible');
    },
  },
  to('cupboard, the currency', 'Currency'),
  to('cupboard, all currencies', 'Another one'),
  back('cupboard, a loaf with its price', 2),
];
