import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import type { FileRows } from '../../src/core/records/log-file.ts';
import { bodyOf } from '../fakes/saved-file.ts';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, type App } from './harness/open-app.ts';
import { chosen } from './harness/other-file.ts';

/** From the bench or the start to the page of the tablet. */
async function toTablet(baker: Baker): Promise<void> {
  await baker.page.locator('.start-grid, .bench-controls').first().waitFor();
  if ((await baker.page.locator('.start-grid').count()) > 0)
    await baker.tap('.bench-controls .control:has-text("Kitchen")');
  else {
    await baker.press('More');
    await baker.tap('.sheet button:has-text("Kitchen")');
  }
  await baker.press('This tablet');
}

async function saved(baker: Baker): Promise<string> {
  await toTablet(baker);
  await baker.press('Save as a file');
  const [file] = await Promise.all([
    baker.page.waitForEvent('download'),
    baker.tap('.slab:visible'),
  ]);
  return readFileSync(await file.path(), 'utf8');
}

/** Chooses a file; what the page says of it. */
async function choose(baker: Baker, text: string): Promise<string> {
  await toTablet(baker);
  await baker.press('Read a saved file');
  await baker.page.locator('input[type=file]').setInputFiles(chosen(text));
  // Over a bench there is another act behind it.
  const act = baker.page.locator('.act:has(input[type=file])');
  await act.locator('h1:not(:has-text("Read a saved file")), .barred').first().waitFor();
  return act.innerText();
}

/** Deletes all that the app keeps in databases. */
const wipe = (page: Page): Promise<readonly string[]> =>
  page.evaluate(async () => {
    const names = (await indexedDB.databases()).flatMap(({ name }) => name ?? []);
    for (const name of names)
      await new Promise<void>((then, no) => {
        const gone = indexedDB.deleteDatabase(name);
        gone.onsuccess = () => then();
        gone.onerror = () => no(gone.error ?? new Error(name));
      });
    return names;
  });

/** Ids of the starts in a database of logs. */
const startsIn = (app: App, database: string, store: string): Promise<readonly string[]> =>
  app.page.evaluate(
    async ([name, rows]) => {
      const settled = <R>(request: IDBRequest<R>) =>
        new Promise<R>((then, no) => {
          request.onsuccess = () => then(request.result);
          request.onerror = () => no(request.error ?? new Error('no reason given'));
        });
      const opened = await settled(indexedDB.open(name));
      const all = await settled(
        opened.transaction(rows, 'readonly').objectStore(rows).getAll() as IDBRequest<
          { fact: { id: string; kind: string } }[]
        >,
      );
      opened.close();
      return all.flatMap(({ fact }) => (fact.kind === 'start' ? [fact.id] : []));
    },
    [database, store] as const,
  );

/** A file is taken in, and its page opened anew: nothing is asked of one that is going. */
const heldIn = async (baker: Baker): Promise<void> => {
  const anew = baker.page.waitForEvent('load');
  await baker.hold();
  await anew;
  await baker.page.locator('.start-grid, .bench').first().waitFor();
};

it('brings all of it back to a wiped tablet, line by line, and to another beside its own', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await baker.begin();
  await baker.slab();
  const file = await saved(baker);
  const [contents, ...lines] = bodyOf(file);
  const { rows } = JSON.parse(contents!) as { rows: FileRows };
  expect(rows.records).toBe(await app.countRows());
  const own = await startsIn(app, 'loafward', 'log');
  expect(own).toHaveLength(1);

  const names = await wipe(app.page);
  expect(names).toContain('loafward');
  await app.reopen();
  await baker.page.locator('.start-grid').waitFor();
  expect(await app.countRows()).toBe(0);
  // Half of it is none of it.
  expect(await choose(baker, file.slice(0, file.length / 2))).toContain('The file is cut off');
  expect(await baker.page.locator('.hold').count()).toBe(0);
  await baker.tap('.slab:visible');
  await app.reopen();
  expect(await choose(baker, file)).toContain('All of it comes in');
  await heldIn(baker);
  await expect.poll(() => app.countRows()).toBe(rows.records);
  await app.reopen();
  const again = bodyOf(await saved(baker));
  expect(again.slice(1).join('\n')).toBe(lines.join('\n'));

  const other = await openApp();
  const hand = new Baker(other);
  await hand.begin();
  const [theirs] = await startsIn(other, 'loafward', 'log');
  await other.reopen();
  expect(await choose(hand, file)).toMatch(
    /^A log of another tablet\s+Bakes that come beside yours: 1\. Yours stay\./,
  );
  await heldIn(hand);
  await expect
    .poll(async () => (await databasesOf(other.page)).includes('loafward-others'))
    .toBe(true);
  await expect.poll(() => startsIn(other, 'loafward-others', 'others')).toEqual(own);
  expect(await startsIn(other, 'loafward', 'log')).toEqual([theirs]);
  await other.reopen();
  expect(await choose(hand, file)).toContain('It is all here already');
  await other.reopen();
  const both = bodyOf(await saved(hand));
  const told = (JSON.parse(both[0]!) as { rows: FileRows }).rows;
  expect(told.others).toEqual([rows.records]);
  expect(both.slice(-rows.records)).toEqual(lines.slice(-rows.records));
  expectNoFaults(other.faults);
  expectNoFaults(app.faults);
});

/** The databases there are. */
const databasesOf = (page: Page): Promise<readonly string[]> =>
  page.evaluate(async () => (await indexedDB.databases()).flatMap(({ name }) => name ?? []));
