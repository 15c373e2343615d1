import { expect, it } from 'vitest';
import { barsAlone } from './harness/bar-alone.ts';
import { Baker } from './harness/baker.ts';
import { beginBread } from './harness/begin-bread.ts';
import { captionCuts } from './harness/caption.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, VIEWPORTS, type App, type ViewportName } from './harness/open-app.ts';
import { WHOLE_BAKE } from './harness/whole-bake.ts';

/** A bread begun beside two that wait, where its dough is. */
const besideTwo = async (app: App, where: string): Promise<Baker> => {
  const baker = new Baker(app);
  await app.page.locator('.start-grid').waitFor();
  await beginBread(baker, 'Lane wheat', 'My loaves are in the fridge');
  await baker.toStart();
  await beginBread(baker, 'Olive and seed', 'Feed now');
  await baker.toStart();
  await beginBread(baker, 'Cherry and hazelnut', where, 1);
  return baker;
};

it.each([
  ['Weighing comes next', 'mix-weigh-1', 'bulk-fold'],
  ['My loaves are ready', 'oven-on', 'load1-judge-1'],
] as const)(
  'beside two bakes a caption cuts no line of words and touches none: %s',
  async (where, first, end) => {
    const app = await openApp();
    const baker = await besideTwo(app, where);
    const at = (step: string) => WHOLE_BAKE.findIndex(({ name }) => name === step);
    let seen = 0;
    for (const { name, go } of WHOLE_BAKE.slice(at(first), at(end))) {
      for (const view of Object.keys(VIEWPORTS) as ViewportName[]) {
        await app.setViewport(view);
        for (const text of ['plain', 'bigger']) {
          await app.page.evaluate((t) => (document.documentElement.dataset['text'] = t), text);
          await app.turn(50);
          const cut = await captionCuts(app.page);
          expect.soft(cut, `${name}, ${view}, ${text}`).toEqual([]);
          expect
            .soft(await barsAlone(app.page), `${name}, ${view}, ${text}: a bar alone`)
            .toEqual([]);
        }
        await app.page.evaluate(() => (document.documentElement.dataset['text'] = 'plain'));
      }
      await app.setViewport('wide');
      seen += await app.page.locator('.caption[data-seen]:not(:empty)').count();
      await go(baker);
    }
    expect(seen).toBeGreaterThan(5);
    expectNoFaults(app.faults);
  },
);
