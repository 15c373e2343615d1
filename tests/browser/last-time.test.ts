import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { beginBread } from './harness/begin-bread.ts';
import { captionCovers } from './harness/caption.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp } from './harness/open-app.ts';
import { walkOn } from './harness/walk-on.ts';

it('carries the one note of a bake to the next one: on the start, read through, said and captioned', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  const { page } = app;
  await page.locator('.start-grid').waitFor();
  await beginBread(baker, 'Cherry and hazelnut', 'My loaves are ready to bake');
  await walkOn(baker, 'oven-on', 'note');
  await baker.answer('It was under');
  await baker.tap('.slab');
  await page.locator('.start-grid').waitFor();
  expect(await page.locator('.start-last').count()).toBe(0);
  await baker.press('Which bread?');
  await baker.press('Cherry and hazelnut');
  await page.locator('.start-last:has-text("This time wait for the dome.")').waitFor();
  // Armed, the words are asked for as clips too.
  await baker.tap('.ear:has-text("Tap to arm sound")');
  await page.locator('.ear:has-text("Sound is on")').waitFor();
  await baker.press('How warm is the kitchen?');
  await baker.key('22');
  await baker.tap('.slab');
  const clips = page.waitForResponse(/\/start[^/]*\.mp3/);
  await baker.noted(() => baker.tap('.slab'));
  const words = 'Last time it was under. This time wait for the dome.';
  const caption = page.locator('.caption');
  await expect.poll(() => caption.innerText()).toContain(words);
  expect((await clips).ok()).toBe(true);
  expect(await page.locator('.through-last').innerText()).toBe(words);
  // A caption has its place once it was painted.
  await expect
    .poll(async () => {
      await app.turn(50);
      return captionCovers(page);
    })
    .toEqual([]);
  // What is said of the page itself comes behind it.
  await expect
    .poll(async () => {
      await app.turn(500);
      return caption.innerText();
    })
    .toContain('Read it through.');
  await baker.press('Say that again');
  await expect.poll(() => caption.innerText()).toContain(words);
  await baker.slab();
  await expect.poll(() => caption.innerText()).not.toContain(words);
  expectNoFaults(app.faults);
  await app.close();
});
