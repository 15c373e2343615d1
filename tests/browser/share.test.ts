import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readXlsx } from '../../src/adapters/sheets/read-xlsx.ts';
import { writeLink } from '../../src/adapters/sheets/link.ts';
import type { Fact } from '../../src/core/records/fact.ts';
import { ownBase } from '../../src/core/sheets/own-base.ts';
import { shippedFormula } from '../core/formula/shipped.ts';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, VIEWPORTS, type App } from './harness/open-app.ts';
import { settled } from './harness/settled.ts';

const keptIn = async (app: App): Promise<string[]> =>
  ((await app.storeRows()) as { fact: Fact }[]).flatMap(({ fact }) =>
    fact.kind === 'formula' ? `${fact.formula.id} ${fact.formula.version}` : [],
  );

const shot = async (app: App, name: string): Promise<void> => {
  if (!process.env['SHOTS']) return;
  for (const [view, size] of Object.entries(VIEWPORTS)) {
    await app.page.setViewportSize(size);
    await settled(app.page);
    await app.screenshot(`share-${name}-${view}`);
  }
  await app.page.setViewportSize(VIEWPORTS.wide);
};

const toShare = async (app: App, name: string): Promise<Baker> => {
  const baker = new Baker(app);
  await baker.page.locator('.start-grid').waitFor();
  await baker.press('Book of formulas');
  await baker.press(name);
  await baker.press('More');
  await baker.press('In and out');
  await baker.page.locator('button:has-text("Bench sheet")').waitFor();
  return baker;
};

it('hands a formula on as a live sheet that reads back, and as a link with its code', async () => {
  const app = await openApp();
  const baker = await toShare(app, 'Cherry and hazelnut');
  await shot(app, 'menu');
  const coming = baker.page.waitForEvent('download');
  await baker.press('Spreadsheet');
  const download = await coming;
  expect(download.suggestedFilename()).toBe('cherry-hazelnut.xlsx');
  const file = new Uint8Array(readFileSync(await download.path()));
  expect(ownBase((await readXlsx(file)).tables!).formula).toEqual(
    shippedFormula('cherry-hazelnut'),
  );
  await baker.press('Link and code');
  await baker.press('Show the code');
  const code = baker.page.locator('.share-code');
  await code.waitFor();
  await shot(app, 'link');
  // A module of it is 0.5 mm and more on every tablet of ours.
  const modules = Number((await code.getAttribute('viewBox'))!.split(' ')[2]);
  const { width, y, height } = (await code.boundingBox())!;
  // All of it is in sight at once: a camera reads no half code.
  expect(y + height).toBeLessThanOrEqual(VIEWPORTS.wide.height);
  expect((width / modules) * 0.17, 'mm a module').toBeGreaterThan(0.5);
  expectNoFaults(app.faults);
});

it('a link opens the formula without a network, and keeps it beside what is here when it is pressed, once', async () => {
  const link = writeLink({ ...shippedFormula('lane-wheat'), salt: 2.1 })!;
  const app = await openApp({ url: `/${link}`, offline: true });
  const baker = new Baker(app);
  await baker.page.locator('h1:has-text("Keep this formula?")').waitFor();
  await shot(app, 'keep');
  expect(await keptIn(app)).toEqual([]);
  await baker.noted(() => baker.tap('.slab:has-text("Keep it")'));
  await baker.page.locator('h1:has-text("It is in the Book.")').waitFor();
  expect(await keptIn(app)).toEqual(['lane-wheat-2 1']);
  // Answered, it is no more in the address: opened anew the page asks nobody again.
  await baker.tap('.slab');
  await baker.page.locator('.book-list').waitFor();
  expect(await baker.page.evaluate(() => location.href)).not.toContain('#');
  expectNoFaults(app.faults);
});

it('takes in a sheet by presses alone, asking what it does not say', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await baker.page.locator('.start-grid').waitFor();
  await baker.press('Book of formulas');
  await baker.press('In and out');
  await baker.press('Take in a file');
  await baker.page.locator('input[type=file]').waitFor({ state: 'attached' });
  const lines = 'Ingredient;Gramm\nMehl;1000\nWasser;750\nSauerteig;200\nSalz;20\nOliven;150\n';
  await baker.page.locator('input[type=file]').setInputFiles({
    name: 'olive loaf.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(`${lines}Preis;-3\n`),
  });
  await baker.page.locator('h1:has-text("What is in each column?")').waitFor();
  await baker.tap('.slab:has-text("It’s right")');
  await baker.page.locator('h1:has-text("What is what?")').waitFor();
  await shot(app, 'sheet');
  await baker.tap('.slab:has-text("It’s right")');
  await baker.page.locator('.act-detail:has-text("row 7")').waitFor();
  await baker.press('Preis');
  await baker.page.locator('h1:has-text("Whose flour makes 100 %?")').waitFor();
  await shot(app, 'convention');
  await baker.press('The bowl’s flour');
  await baker.press('100 %');
  await baker.press('In the fridge');
  await baker.page.locator('h1:has-text("Keep this formula?")').waitFor();
  expect(await baker.page.locator('.act-more').innerText()).toContain('water 77.3 %');
  expect(await keptIn(app)).toEqual([]);
  await baker.noted(() => baker.tap('.slab:has-text("Keep it")'));
  await baker.page.locator('h1:has-text("It is in the Book.")').waitFor();
  expect(await keptIn(app)).toEqual(['olive-loaf 1']);
  expectNoFaults(app.faults);
});

it.each(['Cherry and hazelnut', 'Harbour rye'])(
  'prints %s for the bench on one page of A4 or Letter, nothing cut',
  async (name) => {
    const app = await openApp();
    const baker = await toShare(app, name);
    const { page } = baker;
    await page.evaluate(() => (window.print = () => undefined));
    await baker.press('Bench sheet');
    await page.locator('.stepper').waitFor();
    await shot(app, 'print');
    await baker.tap('.slab:has-text("Print it")');
    await page.locator('.bench-sheet').waitFor({ state: 'attached' });
    // What a page holds inside its margins, CSS pixels: 186 × 273 mm and 192 × 255 mm.
    for (const [format, size] of [
      ['A4', { width: 703, height: 1031 }],
      ['Letter', { width: 724, height: 964 }],
    ] as const) {
      await page.setViewportSize(size);
      await page.emulateMedia({ media: 'print' });
      await page.evaluate(() => document.fonts.ready);
      const found = await page.locator('.bench-sheet').evaluate((sheet) => ({
        bottom: sheet.getBoundingClientRect().bottom + window.scrollY,
        cut: [...sheet.querySelectorAll('h1, h2, p, li > *')]
          .filter(
            (el) =>
              el.scrollWidth > el.clientWidth + 1 && getComputedStyle(el).display !== 'inline',
          )
          .map((el) => el.textContent),
        right: Math.max(
          ...[...sheet.querySelectorAll('*')].map((el) => el.getBoundingClientRect().right),
        ),
        big: parseFloat(getComputedStyle(sheet.querySelector('b')!).fontSize),
      }));
      expect(found.bottom, format).toBeLessThanOrEqual(size.height);
      expect(found.right, format).toBeLessThanOrEqual(size.width + 0.5);
      expect(found.cut, format).toEqual([]);
      expect(found.big, format).toBeGreaterThan(15);
      if (process.env['SHOTS']) await app.screenshot(`bench-${name.split(' ')[0]}-${format}`);
      const sheet = (await page.pdf({ format, preferCSSPageSize: false })).toString('latin1');
      expect(sheet.match(/\/Type\s*\/Page\b(?!s)/g), format).toHaveLength(1);
      if (format === 'Letter') break;
      await page.emulateMedia({ media: 'screen' });
      await page.setViewportSize(VIEWPORTS.wide);
      if ((await page.locator('.bench-sheet').count()) === 0)
        await baker.tap('.slab:has-text("Print it")');
      await page.locator('.bench-sheet').waitFor({ state: 'attached' });
    }
    expectNoFaults(app.faults);
  },
);
