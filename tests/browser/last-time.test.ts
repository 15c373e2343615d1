import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { captionCovers } from './harness/caption.ts';
import { expectNoFaults } from './harness/faults.ts';
import { notedKitchen } from './harness/next-pages.ts';
import { openApp } from './harness/open-app.ts';
import { putRows } from './harness/put-rows.ts';

it('carries the one note of a bake to the next one: read through and captioned as it is said', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await app.page.evaluate(putRows(notedKitchen().records));
  await app.reopen();
  await app.page.locator('.start-grid').waitFor();
  await baker.begin('22', 'Cherry and hazelnut');
  const words = 'Last time it was under. This time wait for the dome.';
  const caption = app.page.locator('.caption');
  await expect.poll(() => caption.innerText()).toContain(`${words} Read it through.`);
  expect(await captionCovers(app.page)).toEqual([]);
  await baker.press('I’ve read it');
  await expect.poll(() => app.page.locator('.through-last').innerText()).toBe(words);
  expectNoFaults(app.faults);
  await app.close();
});
