import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { axe } from './harness/axe.ts';
import { Baker } from './harness/baker.ts';
import { sharedBrowser } from './harness/chromium.ts';
import { expectNoFaults } from './harness/faults.ts';
import { AFTER_YEAR, LOG_BAKE_PAGES } from './harness/log-bake-pages.ts';
import { openApp } from './harness/open-app.ts';
import { press, turned } from './harness/page-step.ts';

it('hands one bake on as a page that opens by itself: no request, no fault, every value there', async () => {
  const app = await openApp({ clock: AFTER_YEAR });
  const baker = new Baker(app);
  await LOG_BAKE_PAGES[0]!.go(baker);
  await press(baker, ['Times', 'Readings']);
  const values = await baker.page.locator('.bake-table tbody tr td:nth-child(3)').allTextContents();
  await turned(baker, '.slab:visible');
  await press(baker, ['Share it']);
  const coming = baker.page.waitForEvent('download');
  await baker.tap('.slab:has-text("Hand it on")');
  const download = await coming;
  expect(download.suggestedFilename()).toMatch(/^cherry-and-hazelnut-\d{4}-\d\d-\d\d\.html$/);
  const path = await download.path();
  const text = readFileSync(path, 'utf8');
  expectNoFaults(app.faults);

  for (const colorScheme of ['light', 'dark'] as const) {
    const browser = await sharedBrowser();
    const page = await browser.newPage({ colorScheme, viewport: { width: 820, height: 1180 } });
    const asked: string[] = [];
    const told: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    page.on('console', (message) => told.push(message.text()));
    page.on('pageerror', (error) => told.push(error.message));
    // Served from nowhere: the text alone is the page.
    await page.route('**/*', (route) =>
      route.request().url() === 'http://bake.example/'
        ? route.fulfill({ contentType: 'text/html', body: text })
        : route.abort(),
    );
    await page.goto('http://bake.example/');
    expect(asked.filter((url) => url !== 'http://bake.example/')).toEqual([]);
    const shown = (await page.locator('body').innerText()).replaceAll('\u00a0', ' ');
    for (const value of values) expect(shown).toContain(value.replaceAll('\u00a0', ' '));
    expect(values.length).toBeGreaterThan(3);
    // No word of the chart is cut, and the page is no wider than the glass.
    const cut = await page.evaluate(() => {
      const svg = document.querySelector('svg')!;
      const { left, right, top, bottom } = svg.getBoundingClientRect();
      return [...svg.querySelectorAll('text')]
        .filter((one) => {
          const box = one.getBoundingClientRect();
          return (
            box.left < left - 1 ||
            box.right > right + 1 ||
            // A line's box reaches over its capitals.
            box.top < top - 4 ||
            box.bottom > bottom + 1
          );
        })
        .map((one) => one.textContent);
    });
    expect(cut).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      820,
    );
    expect(await axe(page)).toEqual([]);
    // A script that somebody puts in finds no leave to run.
    const ran = await page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'window.ran = true';
      document.body.append(script);
      return 'ran' in window;
    });
    expect(ran).toBe(false);
    if (process.env['SHOTS'])
      await page.screenshot({
        path: `tests/browser/out/share-bake-${colorScheme}.png`,
        fullPage: true,
      });
    if (process.env['SHOTS'] && colorScheme === 'light')
      await page.pdf({ path: 'tests/browser/out/share-bake.pdf', preferCSSPageSize: true });
    expect(told.filter((line) => !line.includes('Content Security Policy'))).toEqual([]);
    await page.close();
  }
  await app.close();
});
