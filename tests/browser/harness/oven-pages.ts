import type { Baker } from './baker.ts';
import { back, press, to, turned, type PageStep } from './page-step.ts';

/** Somebody new has so many of a bread of this day; back on the day's page. */
const ordered =
  (name: string, bread: string, count: string) =>
  async (baker: Baker): Promise<void> => {
    await baker.tap('.slab:has-text("Add an order")');
    await press(baker, ['Somebody new']);
    await baker.write(name);
    await turned(baker, '.slab:visible');
    await press(baker, [bread]);
    await baker.page.locator('.orders-lines').waitFor();
    await press(baker, [`1 ${bread}`, 'Key it in']);
    await baker.key(count);
    await turned(baker, '.slab:visible');
    await turned(baker, '.slab:visible');
    await turned(baker, '.slab:visible');
    await baker.page.locator('.slab:has-text("Add an order")').waitFor();
  };

/** The oven's hours and the room of a day, from the start page. */
export const OVEN_PAGES: readonly PageStep[] = [
  {
    name: 'start, to the oven of a day',
    go: (baker) => baker.page.locator('.start-grid').waitFor(),
  },
  to('oven hours, none said', 'Bread circle', 'Oven hours'),
  to('oven hours, the first loading', 'First loading'),
  to('oven hours, the last loaf out', '08:00'),
  to('oven hours, orders close', '12:00', 'Orders close'),
  to('oven hours, at what time', '2 days before'),
  to('oven hours, said', '18:00'),
  {
    name: 'room, a day without orders',
    async go(baker) {
      await turned(baker, '.slab:visible');
      await baker.tap('.slab:has-text("New order")');
      await press(baker, ['Sun', 'More of this day', 'Room left']);
    },
  },
  {
    name: 'room, a day with its line',
    async go(baker) {
      await turned(baker, '.slab:visible');
      await ordered('D', 'Barley tin', '2')(baker);
      await ordered('C', 'Seed and oat', '4')(baker);
    },
  },
  {
    name: 'room, more than goes',
    async go(baker) {
      await baker.tap('.orders-entry:has-text("4 Seed and oat")');
      await baker.page.locator('.orders-lines').waitFor();
      await press(baker, ['4 Seed and oat', 'Key it in']);
      await baker.key('9');
      await baker.tap('.slab:visible');
      await baker.page.locator('.slab:has-text("Take it anyway")').waitFor();
    },
  },
  {
    name: 'room, too much in bars',
    async go(baker) {
      await turned(baker, '.slab:visible');
      await turned(baker, '.slab:visible');
      await turned(baker, '.slab:visible');
      await press(baker, ['More of this day', 'Room left']);
    },
  },
  to('room, as a table', 'As a table'),
  to('room, bread by bread', 'Bread by bread'),
  back('room, load by load', 1, 'Load by load'),
];
