import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { answerAll } from './harness/label-pages.ts';
import { openApp, type App } from './harness/open-app.ts';
import { press, turned } from './harness/page-step.ts';

/** Marks that stand nowhere else, and survive whatever a text is written in. */
const MARKS = ['Qvyxlo', 'Wuzzjik'] as const;

const holding = (text: string): string[] => MARKS.filter((mark) => text.includes(mark));

/** What the page keeps beside the circle itself: every row of every database, and its two storages. */
const keptElsewhere = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const settled = <R>(request: IDBRequest<R>) =>
      new Promise<R>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error ?? new Error('no reason given'));
      });
    const found: unknown[] = [{ ...localStorage }, { ...sessionStorage }, location.href];
    for (const { name } of await indexedDB.databases()) {
      if (name === undefined || name === 'loafward-circle') continue;
      const database = await settled(indexedDB.open(name));
      for (const store of database.objectStoreNames) {
        const rows = database.transaction(store, 'readonly').objectStore(store);
        const [keys, all] = [rows.getAllKeys(), rows.getAll() as IDBRequest<unknown[]>];
        found.push(name, store, await settled(all), keys.result);
      }
      database.close();
    }
    for (const name of await caches.keys())
      found.push((await (await caches.open(name)).keys()).map(({ url }) => url));
    return JSON.stringify(found);
  });

/** Everything that a page says to the network or to its console, from the first request on. */
function overhear(app: App): string[] {
  const heard: string[] = [];
  app.context.on('request', (request) =>
    heard.push(`${request.method()} ${decodeURI(request.url())} ${request.postData() ?? ''}`),
  );
  app.context.on('console', (line) => heard.push(line.text()));
  return heard;
}

/** Somebody new orders a bread for noon; back on the day's page. */
async function ordered(baker: Baker, name: string, bread: string): Promise<void> {
  await turned(baker, '.slab:has-text("Add an order")');
  await press(baker, ['Somebody new']);
  await baker.write(name);
  await turned(baker, '.slab:visible');
  await press(baker, [bread]);
  await baker.page.locator('.orders-lines').waitFor();
  await press(baker, ['Fetched', '12:00']);
  await turned(baker, '.slab:visible');
  await baker.page.locator('.slab:has-text("Add an order")').waitFor();
}

/** A saved file's text; `named`: the names were ticked. */
async function saved(baker: Baker, named: boolean): Promise<string> {
  await press(baker, ['Save as a file']);
  if (named) await press(baker, ['Names and voices']);
  const [file] = await Promise.all([
    baker.page.waitForEvent('download'),
    baker.tap('.slab:visible'),
  ]);
  expect(holding(file.suggestedFilename())).toEqual([]);
  return readFileSync(await file.path(), 'utf8');
}

it('keeps every name on the tablet, whatever is done with its order', async () => {
  const app = await openApp();
  const heard = overhear(app);
  const baker = new Baker(app);
  await baker.page.locator('.start-grid').waitFor();
  await baker.page.evaluate(() => (window.print = () => undefined));
  await press(baker, ['Bread circle']);
  await turned(baker, '.slab:has-text("New order")');
  await press(baker, ['Sun']);
  for (const mark of MARKS) await ordered(baker, mark, 'Lane wheat');
  expect(holding(await baker.page.locator('.act').innerText())).toEqual([...MARKS]);

  // Handed over, printed, and shown as a text to copy.
  await press(baker, ['More of this day', 'Hand over']);
  await baker.tap('.hand-tick >> nth=0');
  await press(baker, ['All loaves', 'Print the list']);
  await baker.tap('.slab:has-text("Print it")');
  await press(baker, ['The list', 'Tell them', 'For all']);
  expect(holding(await baker.page.locator('.hand-text').innerText())).toEqual([...MARKS]);
  await press(baker, ['For another']);
  // Out of the message, and out of the list.
  for (let n = 0; n < 2; n += 1) await turned(baker, '.slab:visible');

  // Labels of its bread.
  await press(baker, ['More of this day', 'Labels', 'Lane wheat']);
  await answerAll(baker);
  await turned(baker, '.slab:visible');
  await baker.tap('.slab:has-text("Print it")');
  await baker.page.locator('.label-sheet').first().waitFor({ state: 'attached' });
  expect(holding(await baker.page.locator('body').innerHTML())).toEqual([]);
  await app.reopen();
  await baker.page.locator('.start-grid').waitFor();
  await press(baker, ['Bread circle', 'Sun 8 Mar']);

  // The day laid, its plan taken, and its bake begun.
  await press(baker, ['Dough and loads']);
  await turned(baker, '.slab:has-text("Plan the day")');
  await press(baker, ['How warm is the kitchen?', '22']);
  await baker.tap('.slab:has-text("Make a plan")');
  await baker.page.locator('.tape').waitFor();
  expect(holding(await baker.page.locator('main').innerText())).toEqual([]);
  await baker.noted(() => baker.tap('.slab:has-text("Take it")'));
  await app.reopen();
  await baker.begin();
  const kinds = (await baker.facts()).map(({ kind }) => kind);
  expect(kinds).toEqual(expect.arrayContaining(['plan', 'start']));
  await baker.toStart();

  // The bread as a link, and the kitchen as a file: with names where they are ticked for it alone.
  await press(baker, ['Book of formulas', 'Lane wheat', 'More', 'In and out', 'Link and code']);
  await baker.page.locator('button:has-text("Copy it")').waitFor();
  expect(holding(await baker.page.locator('main').innerHTML())).toEqual([]);
  await app.reopen();
  // A bake runs: the page opens on its bench.
  await baker.toStart();
  await baker.tap('.bench-controls .control:has-text("Kitchen")');
  await press(baker, ['This tablet']);
  const plain = await saved(baker, false);
  expect(plain).toContain('lane-wheat');
  expect(plain).toContain('"N 1"');
  expect(holding(plain)).toEqual([]);
  const ticked = await saved(baker, true);
  expect(holding(ticked)).toEqual([...MARKS]);

  expect(holding(await keptElsewhere(app.page))).toEqual([]);
  expect(heard.length).toBeGreaterThan(5);
  expect(holding(heard.join('\n'))).toEqual([]);
  // Nothing has left the tablet's own server.
  expectNoFaults(app.faults);
});
