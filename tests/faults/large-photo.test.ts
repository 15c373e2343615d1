import { expect, it } from 'vitest';
import { Baker } from '../browser/harness/baker.ts';
import { expectNoFaults } from '../browser/harness/faults.ts';
import { pickPhoto, toKeepsakes } from '../browser/harness/keepsake-pages.ts';
import { openApp } from '../browser/harness/open-app.ts';
import { openYear } from '../browser/harness/year-kitchen.ts';
import { readPictureHead } from '../../src/core/pictures/picture-head.ts';

/** What large sensors give: 50 megapixels. */
const SIDES = { width: 8688, height: 5792 };

it('takes in a photo of 50 megapixels, made small, and the page lives', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await baker.page.locator('.start-grid').waitFor();
  await openYear(app);
  await toKeepsakes(baker);
  await baker.press('Photos');
  const letters = await app.page.evaluate(({ width, height }) => {
    const canvas = Object.assign(document.createElement('canvas'), { width, height });
    const pen = canvas.getContext('2d')!;
    pen.fillStyle = '#d8c9a8';
    pen.fillRect(0, 0, width, height);
    for (let n = 0; n < 4000; n++) {
      pen.fillStyle = `hsl(${28 + (n % 12)} 55% ${20 + (n % 60)}%)`;
      pen.fillRect((n * 733) % width, (n * 397) % height, 150, 90);
    }
    return canvas.toDataURL('image/jpeg', 0.9).split(',')[1]!;
  }, SIDES);
  const taken = Buffer.from(letters, 'base64');
  expect(readPictureHead(taken)).toEqual({ kind: 'jpeg', size: SIDES });
  expect(taken.length).toBeLessThan(20_000_000);
  await pickPhoto(baker, taken);
  const shown = app.page.locator('.keep-large').first();
  await shown.waitFor({ timeout: 120_000 });
  const sides = await shown.evaluate((img: HTMLImageElement) => [
    img.naturalWidth,
    img.naturalHeight,
  ]);
  expect(sides).toEqual([1024, 683]);
  // Of all that is kept on the disk of this bake, the largest.
  const largest = await app.page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const open = indexedDB.open('loafward-keepsakes');
        open.onerror = () => reject(open.error ?? new Error('It does not open.'));
        open.onsuccess = () => {
          const all = open.result.transaction('kept').objectStore('kept').getAll();
          all.onerror = () => reject(all.error ?? new Error('It cannot be read.'));
          all.onsuccess = () => {
            const sizes = (all.result as object[])
              .flatMap((row) => Object.values(row) as unknown[])
              .map((one) =>
                one instanceof Blob ? one.size : ArrayBuffer.isView(one) ? one.byteLength : 0,
              );
            resolve(Math.max(0, ...sizes));
          };
        };
      }),
  );
  expect(largest).toBeGreaterThan(10_000);
  expect(largest).toBeLessThanOrEqual(200_000);
  expectNoFaults(app.faults);
});
