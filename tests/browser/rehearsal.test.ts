import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp } from './harness/open-app.ts';

it('a rehearsal offers a bread of the baker’s own, and the real log stays as it is', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await baker.page.locator('.start-grid').waitFor();
  await baker.press('Book of formulas');
  await baker.press('Lane wheat');
  await baker.press('More');
  await baker.noted(() => baker.press('Make a copy'));
  await baker.page.locator('h1:has-text("Lane wheat 2")').waitFor();
  const rows = await app.storeRows();
  expect(rows).toHaveLength(1);
  await baker.tap('.slab');
  await baker.tap('.slab');
  await baker.press('More');
  await baker.press('Try it first');
  await baker.page.locator('.rehearsal').waitFor();
  await baker.press('Which bread?');
  await baker.page.locator('.tile:has-text("Lane wheat 2")').waitFor();
  await baker.press('Lane wheat 2');
  await expect.poll(() => baker.page.locator('.start-grid').innerText()).toContain('Lane wheat 2');
  expect(await app.storeRows()).toEqual(rows);
  expectNoFaults(app.faults);
});
