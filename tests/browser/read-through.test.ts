import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { openApp, VIEWPORTS, type ViewportName } from './harness/open-app.ts';
import { settled } from './harness/settled.ts';

it('reads a long recipe on without taking width from it', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await app.page.locator('.start-grid').waitFor();
  await baker.press('Which bread?');
  await baker.press('Olive and seed');
  await baker.begin();
  await app.page.locator('.through').waitFor();
  for (const view of Object.keys(VIEWPORTS) as ViewportName[]) {
    await app.setViewport(view);
    for (const hands of ['right', 'left']) {
      await app.page.evaluate((h) => (document.documentElement.dataset['hands'] = h), hands);
      await app.turn(1_100);
      await settled(app.page);
      const found = await app.page.evaluate(() => {
        const box = (css: string) => document.querySelector(css)?.getBoundingClientRect();
        const further = box('.bench-further .control');
        const others = [...document.querySelectorAll('.bench-controls .control, .slab, .ear')];
        return {
          wide: Math.round((box('.bench-words')?.width ?? 0) - (box('.through')?.width ?? 0)),
          further: further !== undefined,
          apart: others.map((el) => {
            const b = el.getBoundingClientRect();
            return further === undefined
              ? Infinity
              : Math.max(
                  further.left - b.right,
                  b.left - further.right,
                  further.top - b.bottom,
                  b.top - further.bottom,
                );
          }),
        };
      });
      expect.soft(found.wide, `${view}, ${hands}: px taken from the words`).toBe(0);
      if (view !== 'tall') expect.soft(found.further, `${view}, ${hands}: read on`).toBe(true);
      for (const px of found.apart)
        expect.soft(px, `${view}, ${hands}: px apart`).toBeGreaterThan(30);
    }
  }
  await app.setViewport('wide');
  await baker.press('Read on');
  const end = await app.page
    .locator('.bench-words')
    .evaluate((el) => el.scrollTop + el.clientHeight - el.scrollHeight);
  expect(Math.abs(end)).toBeLessThan(2);
});
