import { CIRCLE, type Order, type OrderLine } from '../../../src/core/circle/circle.ts';
import type { Baker } from './baker.ts';
import { back, press, to, turned, type PageStep } from './page-step.ts';

const PUT_CIRCLE = `async (rows) => {
  const asked = indexedDB.open('loafward-circle', 1);
  asked.onupgradeneeded = () => asked.result.createObjectStore('circle');
  const database = await new Promise((then, no) => {
    asked.onsuccess = () => then(asked.result);
    asked.onerror = no;
  });
  const writing = database.transaction('circle', 'readwrite');
  for (const [key, row] of rows) writing.objectStore('circle').put(row, key);
  await new Promise((then, no) => { writing.oncomplete = then; writing.onabort = no; });
  database.close();
}`;

const SATURDAY = '2026-03-14';
const line = (bread: string, count: number, grams: number | null = null): OrderLine => {
  return { bread, count, grams, cut: false };
};
const order = (id: string, at: number | null, ...lines: OrderLine[]): Order => {
  const rest = { paid: false, handed: null, made: 0, standing: null };
  return { id, who: 'n1', day: SATURDAY, at, lines, ...rest };
};
const ORDERS: readonly Order[] = [
  order('o1', 600, line('lane-wheat', 14, 700), line('cherry-hazelnut', 4)),
  order('o2', 540, line('cheese-seed', 6, 800), line('gone', 2)),
  order('o3', null, line('harbour-rye', 2)),
];

/** A circle that was there before: it is opened by the press after this. */
const put = (baker: Baker): Promise<void> => {
  const rows = [
    ['neighbours:n1', { id: 'n1', name: 'B', watch: [] }],
    ...ORDERS.map((one) => [`orders:${one.id}`, one]),
    ['ways', { ...CIRCLE.ways, oven: { from: 480, to: 900 } }],
  ];
  return baker.page.evaluate(`(${PUT_CIRCLE})(${JSON.stringify(rows)})`);
};

/** The dough of a full bake day, from the start page: bowl by bowl, levain, loads, and what is asked before it is laid. */
export const DOUGH_PAGES: readonly PageStep[] = [
  {
    name: 'start, with orders in the Circle',
    async go(baker) {
      await baker.page.locator('.start-grid').waitFor();
      await put(baker);
    },
  },
  {
    name: 'dough, a full day',
    async go(baker) {
      await press(baker, ['Bread circle', 'Sat 14 Mar', 'Dough and loads']);
      await baker.page.locator('.circle-table').waitFor();
    },
  },
  to('dough, one bowl', 'Bowl by bowl'),
  to('dough, several bowls', 'Next dough'),
  back('dough, levain', 1, 'Levain'),
  back('dough, loads', 1, 'Loads'),
  {
    name: 'dough, too many breads',
    async go(baker) {
      await turned(baker, '.slab:visible');
      await turned(baker, '.slab:visible');
    },
  },
  {
    name: 'dough, local rules',
    async go(baker) {
      await turned(baker, '.slab:visible');
    },
  },
  {
    name: 'day, asked by the Circle',
    async go(baker) {
      await turned(baker, '.slab:visible');
      await baker.page.locator('h1:has-text("Plan a day")').waitFor();
    },
  },
];
