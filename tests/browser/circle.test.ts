import type { Page } from 'playwright-core';
import { expect, it, vi } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp } from './harness/open-app.ts';
import { press, turned } from './harness/page-step.ts';

/** Every row of the circle by its key, as it lies on the disk. */
const kept = (page: Page): Promise<Record<string, unknown>> =>
  page.evaluate(async () => {
    const settled = <R>(request: IDBRequest<R>) =>
      new Promise<R>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error ?? new Error('no reason given'));
      });
    const database = await settled(indexedDB.open('loafward-circle'));
    try {
      const store = database.transaction('circle', 'readonly').objectStore('circle');
      const [keys, rows] = [store.getAllKeys(), store.getAll()];
      const found = await settled(rows);
      return Object.fromEntries(keys.result.map((key, i) => [String(key), found[i] as unknown]));
    } finally {
      database.close();
    }
  });

const NAME = 'Zanzibar';

it('keeps neighbours across reloads, takes the last press back, and erases one for good', async () => {
  const app = await openApp();
  const said: string[] = [];
  const listen = (page: Page) => page.on('console', (line) => said.push(line.text()));
  listen(app.page);
  const baker = new Baker(app);
  const circle = async (): Promise<void> => {
    await baker.page.locator('.start-grid').waitFor();
    await press(baker, ['Bread circle']);
    await baker.page.locator('.circle-home').waitFor();
    await press(baker, ['Neighbours']);
  };
  const again = async (): Promise<void> => {
    await app.reopen();
    listen(app.page);
    await circle();
  };
  const shown = () => baker.page.locator('.circle-grid').innerText();
  const add = async (name: string): Promise<void> => {
    await press(baker, ['Add one']);
    await baker.write(name);
    await turned(baker, '.slab:visible');
    await baker.page.locator('h1:has-text("Neighbours")').waitFor();
  };
  await circle();
  await add('B');
  await add(NAME);
  await again();
  expect(await shown()).toContain(NAME);
  await press(baker, [NAME, 'Must not eat', 'sesame']);
  await again();
  await press(baker, [NAME]);
  expect(await shown()).toContain('sesame');
  await press(baker, ['Take that back']);
  expect(await shown()).not.toContain('sesame');
  await again();
  await press(baker, [NAME]);
  expect(await shown()).not.toContain('sesame');

  await press(baker, ['Name']);
  await baker.write(`${NAME} 2`);
  await turned(baker, '.slab:visible');
  expect(JSON.stringify(await kept(app.page))).toContain(NAME);
  await press(baker, ['Erase for good', 'Tap here first', 'Then tap here']);
  await baker.page.locator('h1:has-text("Neighbours")').waitFor();
  expect(await shown()).not.toContain(NAME);
  const rows = await kept(app.page);
  expect(JSON.stringify(rows)).not.toContain(NAME);
  expect(Object.keys(rows).map((key) => key.split(':')[0])).toEqual(['gone', 'neighbours']);
  await again();
  expect(await shown()).toContain('B');
  expect(await shown()).not.toContain(NAME);

  // Nor is it anywhere else: the log, the settings, the address, the console.
  for (const store of ['log', 'settings'])
    expect(JSON.stringify(await app.storeRows(store))).not.toContain(NAME);
  expect(app.page.url()).not.toContain(NAME);
  expect(said.join('\n')).not.toContain(NAME);
  expectNoFaults(app.faults);
});

it('has a circle of its own in a rehearsal, and nothing of it is written', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await baker.page.locator('.start-grid').waitFor();
  await press(baker, ['Bread circle']);
  await baker.page.locator('.circle-home').waitFor();
  await press(baker, ['Neighbours', 'Add one']);
  await baker.write('B');
  await turned(baker, '.slab:visible');
  await baker.page.locator('h1:has-text("Neighbours")').waitFor();
  const rows = await kept(app.page);
  await turned(baker, '.slab:visible');
  await press(baker, ['Start a bake', 'More', 'Try it first']);
  await baker.page.locator('.rehearsal').waitFor();
  await press(baker, ['More', 'Bread circle']);
  await baker.page.locator('.circle-home').waitFor();
  await press(baker, ['Neighbours', 'Add one']);
  await baker.write(NAME);
  await turned(baker, '.slab:visible');
  await vi.waitFor(async () =>
    expect(await baker.page.locator('.circle-grid').innerText()).toBe(NAME),
  );
  expect(await kept(app.page)).toEqual(rows);
  expectNoFaults(app.faults);
});
