import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readXlsx } from '../../src/adapters/sheets/read-xlsx.ts';
import { writeLink } from '../../src/adapters/sheets/link.ts';
import type { Formula } from '../../src/core/formula/formula.ts';
import type { Fact } from '../../src/core/records/fact.ts';
import { writeFormulas } from '../../src/core/sheets/formula-file.ts';
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
  await baker.page.locator('h1:has-text("Which flour makes 100 %?")').waitFor();
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

/** What a page holds inside its margins, CSS pixels: 186 × 273 mm and 192 × 255 mm. */
const PAPER = [
  ['A4', { width: 703, height: 1031 }],
  ['Letter', { width: 724, height: 964 }],
] as const;

/** Prints what stands on the page for the bench, on each paper; what it is found to be, page by page. */
async function printed(baker: Baker, name: string) {
  const { page, app } = baker;
  const found = [];
  for (const [format, size] of PAPER) {
    await page.emulateMedia({ media: 'screen' });
    await page.setViewportSize(VIEWPORTS.wide);
    if ((await page.locator('.bench-sheet').count()) === 0)
      await baker.tap('.slab:has-text("Print it")');
    await page.locator('.bench-sheet').first().waitFor({ state: 'attached' });
    await page.setViewportSize(size);
    await page.emulateMedia({ media: 'print' });
    await page.evaluate(() => document.fonts.ready);
    const sheets = await page.locator('.bench-sheet').evaluateAll((all) =>
      all.map((sheet) => ({
        height: sheet.getBoundingClientRect().height,
        cut: [...sheet.querySelectorAll('h1, h2, p, li > *')]
          .filter(
            (el) =>
              el.scrollWidth > el.clientWidth + 1 && getComputedStyle(el).display !== 'inline',
          )
          .map((el) => el.textContent),
        right: Math.max(
          ...[...sheet.querySelectorAll('*')].map((el) => el.getBoundingClientRect().right),
        ),
        big: Math.min(
          ...[...sheet.querySelectorAll('b')].map((b) => parseFloat(getComputedStyle(b).fontSize)),
        ),
        text: sheet.textContent,
        close: (sheet as HTMLElement).dataset['close'],
      })),
    );
    if (process.env['SHOTS']) await app.screenshot(`bench-${name}-${format}`);
    const pdf = (await page.pdf({ format, preferCSSPageSize: false })).toString('latin1');
    const pages = pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length;
    for (const { height, right, cut, big } of sheets) {
      expect(height, format).toBeLessThanOrEqual(size.height);
      expect(right, format).toBeLessThanOrEqual(size.width + 0.5);
      expect(cut, format).toEqual([]);
      expect(big, format).toBeGreaterThan(15);
    }
    expect(pages, format).toBe(sheets.length);
    found.push(sheets);
  }
  return found;
}

it.each([
  ['Cherry and hazelnut', 0],
  ['Harbour rye', 0],
  // Each line bowl by bowl.
  ['Cherry and hazelnut', 4],
])(
  'prints %s for the bench on one page of A4 or Letter, nothing cut; %i more loaves',
  async (name, more) => {
    const app = await openApp();
    const baker = await toShare(app, name);
    await baker.page.evaluate(() => (window.print = () => undefined));
    await baker.press('Bench sheet');
    await baker.page.locator('.stepper').waitFor();
    for (let n = 0; n < more; n++) await baker.tap('[aria-label^="One loaf more"]');
    await shot(app, 'print');
    for (const sheets of await printed(baker, `${name.split(' ')[0]}-${more}`))
      expect(sheets).toHaveLength(1);
    expectNoFaults(app.faults);
  },
);

/** As much as a reader of formulas takes, every name as long as may be. */
const longest = () => {
  const like = shippedFormula('lane-today');
  const named = (name: string, n: number) =>
    `${name} number ${n + 1} ${'with the longest of names '.repeat(4)}`.slice(0, 80).trim();
  return {
    ...like,
    id: 'long',
    name: named('A bread', 0),
    flours: Array.from({ length: 8 }, (_, n) => ({
      ...{ id: `flour-${n}`, name: named('Flour', n), grain: 'wheat', pct: 12.5 },
    })),
    levain: {
      ...like.levain,
      flours: Array.from({ length: 8 }, (_, n) => ({ id: `flour-${n}`, pct: 12.5 })),
    },
    fillings: Array.from({ length: 12 }, (_, n) => ({
      ...{ id: `filling-${n}`, name: named('Filling', n), pct: 1.5, keeps: 'perishable' },
      ...{ allergens: [], soak: { water: 100 } },
    })),
    process: {
      ...like.process,
      touches: Array.from({ length: 12 }, () => ({ kind: 'fold', after: 20 })),
    },
  };
};

it('prints the longest formula that there may be on numbered pages, nothing cut', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await baker.page.locator('.start-grid').waitFor();
  await baker.press('Book of formulas');
  await baker.press('In and out');
  await baker.press('Take in a file');
  const formula = longest();
  await baker.page.locator('input[type=file]').setInputFiles({
    name: 'long.json',
    mimeType: 'application/json',
    buffer: Buffer.from(writeFormulas([formula as unknown as Formula])),
  });
  await baker.page.locator('h1:has-text("Keep this formula?")').waitFor();
  await baker.noted(() => baker.tap('.slab:has-text("Keep it")'));
  await baker.page.locator('h1:has-text("It is in the Book.")').waitFor();
  // Out of what was taken in, and out of the page that took it.
  for (let n = 0; n < 2; n++) await baker.tap('.slab');
  await baker.page.locator('.book-list').waitFor();
  await baker.press('A bread number 1');
  await baker.press('More');
  await baker.press('In and out');
  await baker.press('Bench sheet');
  await baker.page.evaluate(() => (window.print = () => undefined));
  for (let n = 0; n < 4; n++) await baker.tap('[aria-label^="One loaf more"]');
  await shot(app, 'print-long');
  await baker.tap('.slab:has-text("pages, A4 or Letter")');
  for (const sheets of await printed(baker, 'long')) {
    expect(sheets.length).toBeGreaterThan(1);
    for (const [n, { text }] of sheets.entries())
      expect(text).toContain(`Page ${n + 1} of ${sheets.length}`);
    const all = sheets.map(({ text }) => text).join('\n');
    for (const { name } of [...formula.flours, ...formula.fillings]) expect(all).toContain(name);
    expect(all.match(/Fold\d+\smin/g)).toHaveLength(12);
    expect(all.match(/ spoils: cold until/g)).toHaveLength(12);
    expect(all).toContain('Printed ');
  }
  expectNoFaults(app.faults);
});
