import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { captionCovers } from './harness/caption.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, VIEWPORTS, type ViewportName } from './harness/open-app.ts';
import { tabletsNow } from './harness/tablets.ts';
import { WHOLE_BAKE } from './harness/whole-bake.ts';

it('lets no caption lie over a word that is pressed, counted down or weighed', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await app.page.locator('.start-grid').waitFor();
  await baker.press('How warm is the kitchen?');
  await baker.key('22');
  await baker.tap('.slab');
  await baker.press('Where is your dough?');
  await baker.press('Weighing comes next');
  await baker.startBaking();
  const from = WHOLE_BAKE.findIndex(({ name }) => name === 'mix-weigh-1');
  const to = WHOLE_BAKE.findIndex(({ name }) => name === 'bulk-roll');
  let seen = 0;
  for (const { name, go } of WHOLE_BAKE.slice(from, to)) {
    for (const view of tabletsNow()) {
      await app.setViewport(view);
      for (const text of ['plain', 'bigger']) {
        await app.page.evaluate((t) => (document.documentElement.dataset['text'] = t), text);
        await app.turn(50);
        const covered = await captionCovers(app.page);
        expect.soft(covered, `${name}, ${view}, ${text}`).toEqual([]);
      }
      await app.page.evaluate(() => (document.documentElement.dataset['text'] = 'plain'));
    }
    await app.setViewport('wide');
    seen += await app.page.locator('.caption[data-seen]:not(:empty)').count();
    await go(baker);
  }
  expect(seen).toBeGreaterThan(9);
  expectNoFaults(app.faults);
});

it('shows at a gate what is said of the step behind it, and hides no word of the gate', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await app.page.locator('.start-grid').waitFor();
  await baker.press('How warm is the kitchen?');
  await baker.key('22');
  await baker.tap('.slab');
  await baker.press('Where is your dough?');
  await baker.press('My loaves are ready');
  await baker.startBaking();
  await app.page.locator('.hold').waitFor();
  for (const view of Object.keys(VIEWPORTS) as ViewportName[]) {
    await app.setViewport(view);
    for (const text of ['plain', 'bigger']) {
      await app.page.evaluate((t) => (document.documentElement.dataset['text'] = t), text);
      await app.turn(50);
      expect.soft(await captionCovers(app.page), `${view}, ${text}`).toEqual([]);
      const seen = await app.page.locator('.caption[data-seen]').boundingBox();
      expect.soft(seen?.height ?? 0, `${view}, ${text}`).toBeGreaterThan(20);
    }
  }
  expectNoFaults(app.faults);
});
