import { expect, it } from 'vitest';
import { readPictureHead } from '../../src/core/pictures/picture-head.ts';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { pickPhoto, toKeepsakes } from './harness/keepsake-pages.ts';
import { MICROPHONE } from './harness/microphone.ts';
import { openApp, type App } from './harness/open-app.ts';
import { photograph, PLACE } from './harness/photograph.ts';
import { openYear } from './harness/year-kitchen.ts';

declare const mic: { readonly seconds: number; readonly live: number };

/** What is kept of bakes on the disk: each row's kind, and its bytes as letters. */
const onDisk = (app: App): Promise<readonly { kind: string; type: string; bytes: string }[]> =>
  app.page.evaluate(async () => {
    const settled = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error ?? new Error('no reason given'));
      });
    const database = await settled(indexedDB.open('loafward-keepsakes'));
    try {
      const rows = database.transaction('kept').objectStore('kept');
      const found = (await settled(rows.getAll())) as {
        kind?: string;
        type?: string;
        bytes?: Uint8Array;
      }[];
      return found.map(({ kind = 'gone', type = '', bytes = new Uint8Array() }) => ({
        kind,
        type,
        bytes: Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''),
      }));
    } finally {
      database.close();
    }
  });
const widthOf = (app: App, css: string): Promise<number> =>
  app.page
    .locator(css)
    .first()
    .evaluate((img: HTMLImageElement) => img.naturalWidth);

it('keeps a photo small and without its place across a reload, and erases it for good', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await baker.page.locator('.start-grid').waitFor();
  await openYear(app);
  await toKeepsakes(baker);
  await baker.press('Photos');
  const taken = await photograph(app.page);
  expect(taken.includes(PLACE)).toBe(true);
  await pickPhoto(baker, taken);
  await app.page.locator('.keep-large').waitFor();
  const [small] = await onDisk(app);
  const bytes = Buffer.from(small!.bytes, 'latin1');
  // It was held upright: 3,000 by 2,000 are turned.
  expect(readPictureHead(bytes)).toEqual({ kind: 'jpeg', size: { width: 683, height: 1024 } });
  expect(bytes.length).toBeLessThanOrEqual(200_000);
  expect(small!.bytes).not.toMatch(/Exif|HARBOUR/);

  // Bad files are told, and change nothing: no picture at all, nothing in it, broken, a kind this browser cannot read, too large.
  const told = () => app.page.locator('.notice').allInnerTexts();
  const bad = async (buffer: Buffer, sentence: RegExp): Promise<void> => {
    await pickPhoto(baker, buffer);
    await expect.poll(async () => (await told()).join(' ')).toMatch(sentence);
    expect(await onDisk(app)).toEqual([small]);
  };
  await bad(Buffer.from('Flour, water, salt'), /is\snot\sa\spicture/);
  await bad(Buffer.concat([taken.subarray(0, 200), Buffer.alloc(900, 7)]), /cannot\sbe\sread/);
  await bad(Buffer.alloc(0), /is\snot\sa\spicture/);
  const heic = Buffer.concat([Buffer.from('\0\0\0\x18ftypheic', 'latin1'), Buffer.alloc(4_000, 9)]);
  await bad(heic, /cannot\sbe\sread/);
  await bad(Buffer.concat([taken, Buffer.alloc(20_000_000)]), /too\slarge/);

  await app.reopen();
  await toKeepsakes(baker);
  await expect.poll(() => widthOf(app, '.keep-shown')).toBe(683);
  await baker.press('Photos');
  await expect.poll(() => widthOf(app, '.keep-large')).toBe(683);
  await baker.press('Erase this one');
  await app.page.locator('.hold').waitFor();
  await baker.hold();
  await app.page.locator('.act-headline:has-text("No photo yet")').waitFor();
  expect(await onDisk(app)).toEqual([{ kind: 'gone', type: '', bytes: '' }]);
  await app.reopen();
  await toKeepsakes(baker);
  expect(await app.page.locator('.keep-shown').count()).toBe(0);
  expectNoFaults(app.faults);
});

it('records what is said, plays it after a reload, and erases it with all that names anybody', async () => {
  const app = await openApp();
  await app.context.addInitScript(MICROPHONE);
  await app.reopen();
  const baker = new Baker(app);
  await baker.page.locator('.start-grid').waitFor();
  await openYear(app);
  await toKeepsakes(baker);
  await baker.press('Spoken notes');
  await baker.tap('.slab:has-text("Record")');
  await app.page.locator('.act-care:has-text("not allowed")').waitFor();
  await app.page.evaluate('allowed = true');
  await baker.tap('.slab:has-text("Record")');
  await app.page.locator('.slab:has-text("Stop")').waitFor();
  await expect
    .poll(() => app.page.evaluate(() => mic.seconds), { timeout: 10_000 })
    .toBeGreaterThan(1.5);
  await baker.tap('.slab:has-text("Stop")');
  await app.page.locator('.keep-grid .control:has-text("Note 1")').waitFor();
  expect(await app.page.evaluate(() => mic.live)).toBe(0);
  const [voice] = await onDisk(app);
  expect(voice).toMatchObject({ kind: 'voice', type: expect.stringMatching(/^audio\//) as string });

  await app.reopen();
  await toKeepsakes(baker);
  await baker.press('Spoken notes');
  await app.page.evaluate(`{
    const play = HTMLMediaElement.prototype.play;
    window.ended = 0;
    HTMLMediaElement.prototype.play = function () {
      this.addEventListener('ended', () => (window.ended += 1));
      return play.call(this);
    };
  }`);
  await baker.tap('.keep-grid .control');
  await app.page.locator('.keep-grid .control:has-text("stop")').waitFor();
  await expect.poll(() => app.page.evaluate('ended'), { timeout: 20_000 }).toBe(1);
  await app.page.locator('.keep-grid .control:has-text("stop")').waitFor({ state: 'detached' });
  await baker.press('Album of this bake');
  await baker.press('Erase for good');
  await app.page.locator('.hold').waitFor();
  await baker.hold();
  await app.page.locator('.control:has-text("Spoken notes"):has-text("none yet")').waitFor();
  expect(await onDisk(app)).toEqual([{ kind: 'gone', type: '', bytes: '' }]);
  expectNoFaults(app.faults);
});

it('keeps a note that was written by taps alone, and shows it after a reload', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await baker.page.locator('.start-grid').waitFor();
  await openYear(app);
  await toKeepsakes(baker);
  await baker.tap('.control:has(.control-ask:text-is("Note"))');
  await app.page.locator('.letters').waitFor();
  const stands = () => app.page.locator('.typed-text').inputValue();
  await baker.spell('Été 25, so');
  expect(await stands()).toBe('Été 25, so');
  await baker.press('Erase word');
  expect(await stands()).toBe('Été 25, ');
  await baker.press('Put back');
  await baker.tap('.key-erase');
  await baker.spell('our. Less water');
  expect(await stands()).toBe('Été 25, sour. Less water');
  // The device's own keys come to the field of the page when they are asked for, and go again.
  await baker.press('Tablet’s keys');
  const field = app.page.locator('.typed-text');
  expect(
    await field.evaluate((el: HTMLElement) => [el.inputMode, el === document.activeElement]),
  ).toEqual(['text', true]);
  await app.page.keyboard.type('!');
  await baker.press('Big keys');
  expect(await field.getAttribute('inputmode')).toBe('none');
  // A keyboard that is plugged in writes beside them.
  await app.page.keyboard.press('Backspace');
  await app.page.keyboard.type('.');
  await baker.tap('.letters-done button');
  await baker.tap('.slab:visible');
  const kept = app.page.locator('.control:has(.control-ask:text-is("Note"))');
  await expect.poll(() => kept.innerText()).toMatch(/Été.25,.sour\.\sLess.water\./);
  await app.reopen();
  await toKeepsakes(baker);
  await baker.tap('.control:has(.control-ask:text-is("Note"))');
  await app.page.locator('.typed-text').waitFor();
  // What stands already is read first; a tap on it brings the keys.
  expect(await stands()).toBe('Été 25, sour. Less water.');
  expect(await app.page.locator('.letters').count()).toBe(0);
  await baker.tap('.typed-text');
  await app.page.locator('.letters').waitFor();
  expectNoFaults(app.faults);
});
