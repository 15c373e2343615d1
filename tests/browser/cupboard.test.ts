import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp } from './harness/open-app.ts';
import { press, turned } from './harness/page-step.ts';

it('shops for an order: what is ticked is counted, on the disk and off the list after a reload', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  const shown = () => baker.page.locator('.act').innerText();
  const circle = async (): Promise<void> => {
    await baker.page.locator('.start-grid').waitFor();
    await press(baker, ['Bread circle']);
    await baker.page.locator('.circle-home').waitFor();
  };
  await circle();
  await baker.tap('.slab:has-text("New order")');
  await press(baker, ['Sun']);
  await baker.tap('.slab:has-text("Add an order")');
  await press(baker, ['Somebody new']);
  await baker.write('B');
  await turned(baker, '.slab:visible');
  await press(baker, ['Lane wheat']);
  await baker.page.locator('.orders-lines').waitFor();
  await turned(baker, '.slab:visible');
  await baker.page.locator('.slab:has-text("Add an order")').waitFor();
  await app.reopen();
  await circle();
  await press(baker, ['Store cupboard', 'Shopping list']);
  expect(await shown()).toContain('1 loaf to bake.');
  await press(baker, ['Salt']);
  await baker.key('500');
  await turned(baker, '.slab:visible');
  await baker.page.locator('.cupboard-tick[aria-pressed="true"]:has-text("Salt")').waitFor();

  await app.reopen();
  await circle();
  await press(baker, ['Store cupboard', 'Shopping list']);
  expect(await baker.page.locator('.cupboard-tick').allInnerTexts()).toEqual([
    expect.stringContaining('Strong wheat flour'),
    expect.stringContaining('Wholemeal wheat flour'),
  ]);
  await turned(baker, '.slab:visible');
  await press(baker, ['What you have', 'Salt']);
  expect(await shown()).toContain('500');
  expect(await app.storeRows('log')).toEqual([]);
  expectNoFaults(app.faults);
});
