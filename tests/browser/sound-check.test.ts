import { expect, inject, it, onTestFinished } from 'vitest';
import { serve } from '../../src/serve/serve.ts';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { hear, HEAR_FILES, heard, stretches } from './harness/hear.ts';
import { openApp, VIEWPORTS, type ViewportName } from './harness/open-app.ts';

const MM: Readonly<Record<ViewportName, number>> = { wide: 0.17, small: 0.1925, tall: 0.1785 };

it('comes once before the first bake, is heard, and takes three presses', async () => {
  const server = await serve({ dir: inject('site'), extra: HEAR_FILES });
  onTestFinished(() => server.close());
  const app = await openApp({ server });
  await hear(app.context);
  await app.reopen();
  const baker = new Baker(app);
  const measure = async (name: string) => {
    for (const view of Object.keys(VIEWPORTS) as ViewportName[]) {
      await app.setViewport(view);
      for (const text of ['bigger', 'plain']) {
        await app.page.evaluate((t) => (document.documentElement.dataset['text'] = t), text);
        await app.screenshot(`sound-${name}-${view}-${text}`);
        const found = await app.page.evaluate(() => ({
          over: document.documentElement.scrollHeight - innerHeight,
          wide: document.documentElement.scrollWidth - innerWidth,
          further: document.querySelectorAll('.bench-further').length,
          sizes: [...document.querySelectorAll('.control, .tile')].map((el) => {
            const { width, height } = el.getBoundingClientRect();
            return Math.min(width, height);
          }),
        }));
        const at = `${name} at ${view}, ${text}`;
        expect.soft(found, at).toMatchObject({ over: 0, wide: 0 });
        if (text === 'plain') expect.soft(found.further, at).toBe(0);
        for (const px of found.sizes)
          expect.soft(px * MM[view], `${at}: a press, mm`).toBeGreaterThanOrEqual(22);
      }
    }
    await app.setViewport('wide');
    for (const theme of ['dark', 'light']) {
      await app.page.evaluate((t) => (document.documentElement.dataset['theme'] = t), theme);
      expect.soft(await app.axe(), `axe: ${name}, ${theme}`).toEqual([]);
    }
  };
  const sounds = () => app.page.locator('[data-sounds]').innerText();

  await app.page.locator('.start-grid').waitFor();
  await baker.press('How warm is the kitchen?');
  await baker.key('22');
  await baker.tap('.slab');
  await baker.tap('.slab:has-text("a sound check comes first")');
  await app.page.locator('.sound-calls').waitFor();
  await measure('asked');

  let presses = 0;
  const press = async (selector: string) => {
    await baker.tap(selector);
    presses += 1;
  };
  await press('.slab:has-text("Play the calls")');
  await app.page.locator('.tile').first().waitFor();
  await measure('playing');
  expect(await app.page.locator('[data-sounds]').count()).toBe(0);
  await app.turn(10_000);
  expect(await sounds()).toBe('Come and look');
  // Its three beats are heard in real time while the page's clock stands.
  await expect.poll(async () => stretches(await heard(app.page)).length).toBe(3);
  await app.turn(4_000);
  expect(await sounds()).toBe('It’s time');
  await app.screenshot('sound-sounds');
  await press('.tile:has-text("I heard them")');
  await app.page.locator('.act-headline:text-is("Heard well")').waitFor();
  await measure('heard');
  expect(await app.countRows()).toBe(0);
  const began = Date.now();
  await baker.noted(() => press('.slab:has-text("Start baking")'));
  // The first act is said aloud, as its caption stands.
  await app.page.locator('.caption:has-text("Read it through.")').waitFor();
  await expect
    .poll(async () => {
      const moments = (await heard(app.page)).filter(({ wall }) => wall > began);
      return moments.filter(({ rms }) => rms > 0.003).length * 10;
    })
    .toBeGreaterThan(1_500);
  expect(presses).toBe(3);
  expect((await baker.facts()).map(({ kind }) => kind)).toEqual(['start']);

  // The next bake begins with the press itself.
  await baker.toStart();
  await baker.press('How warm is the kitchen?');
  await baker.key('22');
  await baker.tap('.slab');
  await baker.noted(() => baker.tap('.slab:has-text("Start baking")'));
  expectNoFaults(app.faults);
});
