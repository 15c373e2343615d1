import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readPictureHead } from '../../src/core/pictures/picture-head.ts';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, type App } from './harness/open-app.ts';
import { photograph, PLACE } from './harness/photograph.ts';

/** The picture of Lane wheat on the disk; null: none. */
const kept = async (app: App): Promise<Buffer | null> => {
  const letters = await app.page.evaluate(async () => {
    const settled = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error ?? new Error('no reason given'));
      });
    const known = await indexedDB.databases();
    if (!known.some(({ name }) => name === 'loafward-pictures')) return null;
    const database = await settled(indexedDB.open('loafward-pictures'));
    try {
      const rows = database.transaction('pictures').objectStore('pictures');
      const row = (await settled(rows.get('lane-wheat'))) as { now: Uint8Array } | undefined;
      return row?.now ? Array.from(row.now, (byte) => String.fromCharCode(byte)).join('') : null;
    } finally {
      database.close();
    }
  });
  return letters === null ? null : Buffer.from(letters, 'latin1');
};
const pick = async (app: App, bytes: Buffer): Promise<void> => {
  const file = join(await mkdtemp(join(tmpdir(), 'loafward-picture-')), 'IMG_0001.jpg');
  await writeFile(file, bytes);
  await app.page.locator('input[aria-label="Choose one"]').setInputFiles(file);
};
const widthOf = (app: App, css: string): Promise<number> =>
  app.page.locator(css).evaluate((img: HTMLImageElement) => img.naturalWidth);
const toPicture = async (baker: Baker): Promise<void> => {
  await baker.page.locator('.start-grid').waitFor();
  await baker.press('Book of formulas');
  await baker.press('Lane wheat');
  await baker.press('More');
  await baker.press('Its picture');
};

it('makes a picture small and without its place, keeps it across a reload, and has it in the saved file', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  const taken = await photograph(app.page);
  expect(taken.includes(PLACE)).toBe(true);
  await toPicture(baker);
  await pick(app, taken);
  await app.page.locator('.picture-large').waitFor();
  const small = (await kept(app))!;
  // It was held upright: 3,000 by 2,000 are turned.
  expect(readPictureHead(small)).toEqual({ kind: 'jpeg', size: { width: 683, height: 1024 } });
  expect(small.length).toBeLessThanOrEqual(200_000);
  expect(small.includes(PLACE)).toBe(false);
  expect(small.includes('Exif')).toBe(false);
  expect(await widthOf(app, '.picture-large')).toBe(683);

  // Bad files change nothing.
  const told = () => app.page.locator('.act-care').innerText();
  const bad = async (buffer: Buffer, sentence: RegExp) => {
    await pick(app, buffer);
    await expect.poll(told).toMatch(sentence);
    expect((await kept(app))!.equals(small)).toBe(true);
  };
  await bad(Buffer.from('Flour, water, salt'), /is\snot\sa\spicture/);
  await bad(Buffer.concat([taken.subarray(0, 200), Buffer.alloc(900, 7)]), /cannot\sbe\sread/);
  await bad(Buffer.concat([taken, Buffer.alloc(20_000_000)]), /too\slarge/);

  await app.reopen();
  await baker.page.locator('.start-grid').waitFor();
  await baker.press('Book of formulas');
  await expect.poll(() => widthOf(app, '.picture-small')).toBe(683);
  await baker.press('Lane wheat');
  await expect.poll(() => widthOf(app, '.picture-shown')).toBe(683);
  await baker.press('More');
  await baker.press('Its picture');
  await baker.press('Take it away');
  await app.page.locator('.picture-large').waitFor({ state: 'detached' });
  expect(await kept(app)).toBeNull();
  await baker.press('Take that back');
  await app.page.locator('.picture-large').waitFor();
  expect((await kept(app))!.equals(small)).toBe(true);
  for (let n = 0; n < 3; n++) await baker.tap('.slab');

  // The saved file brings it into an empty kitchen.
  await baker.tap('.bench-controls .control:has-text("Kitchen")');
  await baker.press('This tablet');
  await baker.press('Save as a file');
  const [file] = await Promise.all([app.page.waitForEvent('download'), baker.tap('.slab')]);
  const other = await openApp();
  const hand = new Baker(other);
  await other.page.locator('.start-grid').waitFor();
  await hand.tap('.bench-controls .control:has-text("Kitchen")');
  await hand.press('This tablet');
  await hand.press('Read a saved file');
  await other.page.locator('input[type=file]').setInputFiles(await file.path());
  await other.page.locator('.hold').waitFor();
  await hand.hold();
  await expect.poll(() => kept(other)).toEqual(small);
  await other.page.locator('.start-grid').waitFor();
  await hand.press('Book of formulas');
  await expect.poll(() => widthOf(other, '.picture-small')).toBe(683);
  expectNoFaults(other.faults);
  expectNoFaults(app.faults);
});
