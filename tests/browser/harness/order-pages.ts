import type { Baker } from './baker.ts';
import { back, keyed, press, to, turned, type PageStep } from './page-step.ts';

/** Somebody new has a bread of this day; back on the day's page. */
const ordered =
  (name: string, bread: string) =>
  async (baker: Baker): Promise<void> => {
    await baker.tap('.slab:has-text("Add an order")');
    await press(baker, ['Somebody new']);
    await baker.write(name);
    await turned(baker, '.slab:visible');
    await press(baker, [bread]);
    await baker.page.locator('.orders-lines').waitFor();
    await turned(baker, '.slab:visible');
    await baker.page.locator('.slab:has-text("Add an order")').waitFor();
  };

/** Orders, from the start page: a bake day, what somebody has of it, and what comes every week. */
export const ORDER_PAGES: readonly PageStep[] = [
  {
    name: 'start, to the orders',
    go: (baker) => baker.page.locator('.start-grid').waitFor(),
  },
  {
    name: 'orders, on which day',
    async go(baker) {
      await press(baker, ['Bread circle']);
      await turned(baker, '.slab:has-text("New order")');
    },
  },
  to('orders, a day without any', 'Sun'),
  {
    name: 'orders, nobody known',
    go: (baker) => baker.tap('.slab:has-text("Add an order")'),
  },
  to('orders, somebody new', 'Somebody new'),
  {
    name: 'orders, what somebody has',
    async go(baker) {
      await baker.write('B of the mill');
      await turned(baker, '.slab:visible');
    },
  },
  {
    name: 'orders, an order',
    async go(baker) {
      await press(baker, ['Cherry and hazelnut']);
      await baker.page.locator('.orders-lines').waitFor();
    },
  },
  to('orders, a bread of it', '1 Cherry and hazelnut'),
  to('orders, whole or sliced', 'Whole or sliced'),
  to('orders, how heavy', 'Weight when cool'),
  keyed('orders, how heavy, too light', '90'),
  {
    name: 'orders, how heavy, keyed',
    async go(baker) {
      await press(baker, ['Clear']);
      await baker.key('850');
    },
  },
  back('orders, how many', 1, 'Key it in'),
  keyed('orders, too many', '10000'),
  {
    name: 'orders, an order of two breads',
    async go(baker) {
      await press(baker, ['Clear']);
      await baker.key('12');
      await turned(baker, '.slab:visible');
      await turned(baker, '.slab:visible');
      await press(baker, ['Another bread', 'Olive and seed']);
      await baker.page.locator('.orders-lines').waitFor();
    },
  },
  to('orders, fetched when', 'Fetched'),
  to('orders, fetched and paid', '10:00', 'Paid'),
  to('orders, every week', 'Every Sun'),
  to('orders, from here on', 'Every Sun: change'),
  {
    name: 'orders, a day with some',
    async go(baker) {
      await turned(baker, '.slab:visible');
      await ordered('C', 'Lane wheat')(baker);
      await ordered('The lock keeper', 'Barley tin')(baker);
      await ordered('D', 'Harbour rye')(baker);
    },
  },
  {
    name: 'orders, whose it is',
    go: (baker) => baker.tap('.slab:has-text("Add an order")'),
  },
  to('orders, the same as last time', 'B of the mill'),
  {
    name: 'orders, a second one',
    async go(baker) {
      await baker.tap('.slab:has-text("As last time")');
      await baker.page.locator('.slab:has-text("Add to it")').waitFor();
    },
  },
  {
    name: 'orders, one taken back',
    async go(baker) {
      await press(baker, ['A second one']);
      await baker.page.locator('.orders-lines').waitFor();
      await press(baker, ['Take that back']);
    },
  },
  back('orders, the day again', 1),
  to('orders, more of the day', 'More of this day'),
  {
    name: 'orders, what stands',
    async go(baker) {
      await press(baker, ['Close', 'Circle', 'Standing orders']);
    },
  },
  to('orders, one that stands', 'B of the mill'),
  to('orders, its weekday', 'Weekday'),
  back('orders, until when', 1, 'Until'),
];
