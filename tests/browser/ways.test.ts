import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, type App } from './harness/open-app.ts';
import { tabletsNow } from './harness/tablets.ts';
import { settled } from './harness/settled.ts';
import { WHOLE_BAKE } from './harness/whole-bake.ts';

/** What stands outside the window, is wider than it, or reaches out of what may be pressed. */
const clipped = async (app: App): Promise<readonly string[]> => {
  await settled(app.page);
  return app.page.evaluate(() => {
    const out: string[] = [];
    const page = document.documentElement;
    if (page.scrollWidth > innerWidth) out.push(`page: ${page.scrollWidth} wide`);
    const sheet = [...document.querySelectorAll('.sheet')].at(-1);
    if (sheet && sheet.scrollHeight > sheet.clientHeight)
      out.push('sheet is longer than its window');
    if (sheet && sheet.scrollWidth > sheet.clientWidth) out.push('sheet is wider than its window');
    for (const el of (sheet ?? document).querySelectorAll('.control, .tile, .key, .slab')) {
      const range = document.createRange();
      range.selectNodeContents(el);
      const [words, box] = [range.getBoundingClientRect(), el.getBoundingClientRect()];
      const inside =
        words.left >= box.left - 0.5 &&
        words.right <= box.right + 0.5 &&
        words.top >= box.top - 0.5 &&
        words.bottom <= box.bottom + 0.5;
      if (!inside) out.push(el.textContent ?? '');
    }
    for (const el of document.querySelectorAll('.window-hours > div, .times-row > *, .lines li')) {
      const box = el.getBoundingClientRect();
      const room = el.parentElement!.getBoundingClientRect();
      if (box.right > room.right + 1 || box.left < room.left - 1) out.push(el.textContent ?? '');
    }
    return out;
  });
};

const everywhere = async (app: App, name: string): Promise<void> => {
  for (const view of tabletsNow()) {
    await app.setViewport(view);
    await app.turn(50);
    await app.screenshot(`ways-${name}-${view}`);
    expect(await clipped(app), `${name} at ${view}`).toEqual([]);
  }
  await app.setViewport('wide');
};

it('walks in °F, ounces and twelve hours, chosen on one page, and keeps grams and °C', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await app.page.locator('.start-grid').waitFor();
  await baker.press('More');
  await baker.press('Ways of showing');
  for (const way of ['°F', 'oz', '12 hours']) await baker.press(way);
  expect(await app.page.locator('.ways [aria-pressed="true"]').allInnerTexts()).toEqual([
    '°F',
    'oz',
    '12 hours',
    'Light',
    'Plain',
    'Right hand',
    'Never',
  ]);
  await everywhere(app, 'page');
  expect(await app.axe()).toEqual([]);
  await baker.tap('.ways-last button:has-text("Close")');
  await baker.tap('.sheet button:has-text("Close")');

  await baker.press('How warm is the kitchen?');
  expect(await baker.headline()).toMatch(/^Kitchen,\s°F$/);
  await baker.key('72');
  await everywhere(app, 'kitchen');
  await baker.tap('.slab');
  await baker.startBaking();
  await app.page.locator('.through').waitFor();
  await everywhere(app, 'read');
  const facts = (await baker.facts()) as { kind: string; kitchen?: number }[];
  expect(facts.find(({ kind }) => kind === 'start')?.kitchen).toBe(22.22);

  for (const { name, go } of WHOLE_BAKE) {
    if (name === 'levain-feed-1') {
      expect(await baker.headline()).toMatch(/\soz\sstarter$/);
      await everywhere(app, 'feed');
    }
    if (name === 'levain-ripening') {
      await everywhere(app, 'window');
      expect(await app.page.locator('.times-ends').innerText()).toMatch(/at \d+:\d\d\s[ap]m/);
      await app.page.evaluate(() => (document.documentElement.dataset['text'] = 'bigger'));
      await everywhere(app, 'window-bigger');
      await app.page.evaluate(() => delete document.documentElement.dataset['text']);
      break;
    }
    await go(baker);
  }

  // A low light by hand, at once, from the bench in three presses.
  await baker.press('More');
  await baker.press('Ways of showing');
  await baker.tap('.ways button:has-text("Now")');
  expect(await app.page.evaluate(() => document.documentElement.dataset['theme'])).toBe('dim');
  await everywhere(app, 'page-dim');
  expect(await app.axe()).toEqual([]);
  await baker.tap('.ways-last button:has-text("Close")');
  await baker.press('Back to the bench');
  await everywhere(app, 'bench-dim');

  // Locked for a wet cloth: a touch does nothing, a call is seen through it and can be hushed.
  const toThree = await app.page.evaluate(() => Date.UTC(2026, 2, 7, 3) - Date.now());
  await app.turn(toThree - 30_000);
  if ((await app.page.locator('.return').count()) > 0) await baker.press('I’ve read it');
  const [minutes, seconds] = (await app.page.locator('.times-number').innerText()).split(':');
  await app.turn((Number(minutes) * 60 + Number(seconds) - 10) * 1000);
  await baker.press('More');
  await baker.press('Wipe the screen');
  const before = (await baker.facts()).length;
  await baker.tap('.wipe');
  expect(await baker.facts()).toHaveLength(before);
  await app.turn(8_000);
  await app.page.locator('.wipe-call').waitFor();
  expect(await app.page.locator('.wipe-call').innerText()).toBe('Come and look: the levain.');
  await app.screenshot('ways-wipe-call');
  await baker.noted(() => baker.tap('.wipe'));
  expect((await baker.facts()).at(-1)?.kind).toBe('heard');
  expect(await app.page.locator('.wipe').count()).toBe(1);
  await app.turn(20_000);
  expect(await app.page.locator('.wipe').count()).toBe(0);
  expectNoFaults(app.faults);
});

it('is held against a bank card, stays so, and fits at 3 and at 8 px a millimetre', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await baker.begin();
  await baker.press('More');
  await baker.press('Ways of showing');
  await baker.press('Size by a bank card');
  const width = () =>
    app.page.locator('.card-frame').evaluate((el) => el.getBoundingClientRect().width);
  expect(await width()).toBeCloseTo(85.6 * 5.88, 0);
  await everywhere(app, 'card');
  for (let n = 0; n < 2; n++) await baker.tap('.card-controls .control-label:text-is("Bigger")');
  await baker.tap('.card-controls .control-label:text-is("A bit smaller")');
  expect(await width()).toBeCloseTo(85.6 * 6.26, 0);
  await baker.press('It fits: save it');
  const scale = () =>
    app.page.evaluate(() => document.documentElement.style.getPropertyValue('--px-per-mm'));
  expect(await scale()).toBe('6.26');
  // A page may be closed before a write of that very moment is through: it is kept by then.
  await expect
    .poll(async () => JSON.stringify(await app.storeRows('settings')))
    .toContain('"pxPerMm":6.26');
  await app.reopen();
  await app.page.locator('.act-headline').waitFor();
  await expect.poll(scale).toBe('6.26');

  for (const pxPerMm of [3, 8]) {
    await app.page.evaluate((px) => {
      document.documentElement.dataset['held'] = '';
      document.documentElement.style.setProperty('--px-per-mm', String(px));
    }, pxPerMm);
    await everywhere(app, `read-${pxPerMm}`);
    for (const view of tabletsNow()) {
      await app.setViewport(view);
      const over = await app.page.evaluate(
        () => document.documentElement.scrollHeight - innerHeight,
      );
      expect(over, `${pxPerMm} px a mm at ${view}`).toBeLessThanOrEqual(0);
    }
  }
  expectNoFaults(app.faults);
});
