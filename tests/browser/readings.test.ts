import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, VIEWPORTS, type App, type ViewportName } from './harness/open-app.ts';

interface Row {
  readonly fact: { readonly kind: string; readonly reading?: Record<string, unknown> };
}

/** The readings and corrections of the log, without what every fact has. */
const measured = async (app: App) =>
  ((await app.storeRows()) as Row[])
    .filter(({ fact }) => fact.kind === 'reading' || fact.kind === 'correct')
    .map(({ fact }) => [fact.kind, fact.reading]);

/** Nothing of a page over the bench lies outside it, on any of the tablets, or it is read on. */
const fits = async (app: App): Promise<void> => {
  for (const view of Object.keys(VIEWPORTS) as ViewportName[]) {
    await app.setViewport(view);
    const over = await app.page.evaluate(() => {
      const sheet = document.querySelector('.sheet')!;
      const more = sheet.querySelector('.sheet-further .control') ? 0 : sheet.scrollHeight;
      return [Math.max(0, more - sheet.clientHeight), sheet.scrollWidth - sheet.clientWidth];
    });
    expect(over, view).toEqual([0, 0]);
  }
  await app.setViewport('wide');
  expect(await app.axe()).toEqual([]);
};

/** Every kind of reading from the bench of a rising dough: what is pressed, one word a press. */
const KINDS: readonly (readonly [readonly string[], Record<string, unknown>])[] = [
  [['2', '4', '5', 'Dough|24.5'], { what: 'doughTemperature', celsius: 24.5 }],
  [['Kitchen temperature', '2', '1', 'slab'], { what: 'kitchenTemperature', celsius: 21 }],
  [['9', '6', '5', 'Inside the loaf|96.5'], { what: 'coreTemperature', celsius: 96.5 }],
  [['Dough rise, by eye', 'By half'], { what: 'rise', percent: 50, of: 'dough' }],
  [['8', '5', 'Levain rise|85'], { what: 'rise', percent: 85, of: 'levain' }],
  [['Edge and bubbles', 'Domed', 'Many'], { what: 'edge', edge: 'domed', bubbles: 'many' }],
  [['Other readings', 'Dent test', 'Comes back slowly'], { what: 'poke', dent: 'slow' }],
  [['1', '8', '4', '0', 'Dough|1840'], { what: 'weight', grams: 1840, of: 'dough' }],
  [['9', '1', '1', 'A piece|911'], { what: 'weight', grams: 911, of: 'piece' }],
  [['Other readings', 'Crust colour', 'Golden'], { what: 'crust', colour: 'golden' }],
];

const tap = (baker: Baker, what: string): Promise<void> => {
  if (what === 'slab') return baker.tap('.slab');
  if (/^\d$/.test(what)) return baker.key(what);
  // What a number is said to be stands over its amount.
  const parts = what.split('|').map((part) => `:has-text("${part}")`);
  return baker.tap(`button${parts.join('')}`);
};

it('takes every kind of reading in six single taps at most, and mends one', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await app.page.locator('.start-grid').waitFor();
  await baker.press('How warm is the kitchen?');
  await baker.key('22');
  await baker.tap('.slab');
  await baker.press('Where is your dough?');
  await baker.press('My dough is in the bowl');
  await baker.startBaking();

  for (const [presses, reading] of KINDS) {
    const all = ['New reading', ...presses];
    expect(all.length, all.join(' ')).toBeLessThanOrEqual(6);
    await baker.noted(async () => {
      for (const what of all) await tap(baker, what);
    });
    expect((await measured(app)).at(-1)).toEqual(['reading', reading]);
    expect(await app.page.locator('.sheet, .pad').count(), all.join(' ')).toBe(0);
  }

  // Half typed, it outlives a reload and stands at its own question.
  await baker.press('New reading');
  await baker.key('24');
  // A page may be closed before a write of that very moment is through: the keys are kept by then.
  await expect
    .poll(async () => JSON.stringify(await app.storeRows('settings')))
    .toContain('"text":"24"');
  await app.reopen();
  await baker.press('New reading');
  const typed = app.page.locator('.pad-typed');
  await expect.poll(() => typed.innerText()).toBe('24');
  await fits(app);
  await baker.press('Clear');
  await fits(app);
  await baker.press('Other readings');
  await fits(app);
  await baker.press('Readings so far');
  expect(await app.page.locator('.reading-row').count()).toBe(6);
  await fits(app);
  await baker.noted(async () => {
    for (const what of ['Piece weight', '9', '0', '1', 'slab']) await tap(baker, what);
  });
  expect((await measured(app)).at(-1)).toEqual([
    'correct',
    { what: 'weight', grams: 901, of: 'piece' },
  ]);
  await baker.press('New reading');
  await baker.press('Readings so far');
  expect(await app.page.locator('.reading-row', { hasText: 'Piece weight' }).innerText()).toMatch(
    /901 g\s+\d\d:\d\d · was 911 g/,
  );
  expectNoFaults(app.faults);
});
