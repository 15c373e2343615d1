import { expect, it } from 'vitest';
import { Baker } from '../browser/harness/baker.ts';
import { beginBread } from '../browser/harness/begin-bread.ts';
import { expectNoFaults } from '../browser/harness/faults.ts';
import { openApp } from '../browser/harness/open-app.ts';

it('has beside the rise chart a table of the same values, and says it', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await app.page.locator('.start-grid').waitFor();
  await beginBread(baker, 'Cherry and hazelnut', 'My dough is in the bowl');
  for (const percent of ['10', '25']) {
    await baker.press('New reading');
    await baker.key(percent);
    await baker.noted(() => baker.tap('button:has-text("Dough rise"):has-text("%")'));
  }
  await baker.press('More');
  await baker.press('Show the rise');
  const chart = app.page.locator('.rise-chart');
  await chart.waitFor();
  await app.turn(1_000);

  const alt = (await chart.getAttribute('aria-label')) ?? '';
  expect(alt).toMatch(/goal 90 %\. Readings: 2\.$/);
  expect(alt.split(/\s+/).length).toBeLessThanOrEqual(20);
  // What stands beside the marks stands in the table too, and a line for now.
  const labels = await chart.locator('.rise-label').allInnerTexts();
  const cells = (await app.page.locator('.rise-table').innerText()).replaceAll('\u00a0', ' ');
  for (const read of ['10 %', '25 %']) {
    expect(labels).toContain(read);
    expect(cells).toContain(read);
  }
  await baker.press('Say this chart');
  await app.turn(100);
  await expect
    .poll(() => app.page.locator('.caption').first().textContent())
    .toMatch(/percent now, about\./);
  expectNoFaults(app.faults);
});
