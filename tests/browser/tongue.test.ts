import { expect, it } from 'vitest';
import { bench } from '../../src/core/speech/de/bench.ts';
import { beforeStart } from '../../src/core/speech/de/before.ts';
import { read } from '../../src/core/speech/de/read.ts';
import { ways } from '../../src/core/speech/de/ways.ts';
import { bench as english } from '../../src/core/speech/words/bench.ts';
import { ways as englishWays } from '../../src/core/speech/words/ways.ts';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, VIEWPORTS, type ViewportName } from './harness/open-app.ts';
import { settled } from './harness/settled.ts';

it('is turned to German by taps, walks on in it with its captions, and is turned back', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  const said = () => app.page.locator('.caption').first().innerText();
  await baker.begin();
  expect(await app.page.locator('html').getAttribute('lang')).toBe('en');

  await baker.press(english.more);
  await baker.press(englishWays.title);
  await baker.tap(`.ways button:has-text("${englishWays.tongue.name}")`);
  await baker.tap('.ways button:has-text("Deutsch")');
  await app.page.locator('html[lang="de"]').waitFor();
  await app.page.locator('.act-headline').first().waitFor();
  expect(await baker.headline()).toBe(read['read.plan'].headline);

  await baker.slab();
  await expect.poll(said).toContain(read['read.list'].spoken);
  for (const { ask } of beforeStart.slice(1, 3)) {
    await baker.slab();
    await expect.poll(said).toContain(ask);
  }

  await baker.press(bench.more);
  await baker.press(ways.title);
  await baker.tap(`.ways button:has-text("${ways.tongue.name}")`);
  await app.page.locator('.ways button:has-text("English")').waitFor();
  for (const text of ['plain', 'bigger'])
    for (const view of Object.keys(VIEWPORTS) as ViewportName[]) {
      await app.setViewport(view);
      await app.page.evaluate((t) => (document.documentElement.dataset['text'] = t), text);
      await app.turn(50);
      await settled(app.page);
      await app.screenshot(`tongue-ways-${text}-${view}`);
      const over = await app.page.evaluate(() => {
        const sheet = [...document.querySelectorAll('.sheet')].at(-1)!;
        return {
          high: sheet.scrollHeight - sheet.clientHeight,
          wide: sheet.scrollWidth - sheet.clientWidth,
        };
      });
      expect(over, `${text} ${view}`).toEqual({ high: 0, wide: 0 });
    }
  await app.setViewport('wide');
  await app.page.evaluate(() => delete document.documentElement.dataset['text']);

  await baker.tap('.ways button:has-text("English")');
  await app.page.locator('html[lang="en"]').waitFor();
  await app.page.locator(`button:has-text("${english.more}")`).first().waitFor();
  expectNoFaults(app.faults);
});
