import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { changesASecond } from './harness/flashes.ts';
import { openApp, type App } from './harness/open-app.ts';

const MINUTE = 60_000;

/** What moves by itself or would on a change, but for a hold that fills in steps. */
const moving = (app: App): Promise<readonly string[]> =>
  app.page.evaluate(() => [
    ...document
      .getAnimations()
      .filter(({ effect }) => !/^steps\(\d\)$/.test(effect?.getTiming().easing ?? ''))
      .map((one) => `${one.constructor.name} ${String(one.id)}`),
    ...[...document.querySelectorAll('*')].flatMap((el) => {
      const { transitionDuration, transitionTimingFunction, animationName } = getComputedStyle(el);
      const stepped = /^(steps\(\d\)(, )?)+$/.test(transitionTimingFunction);
      const still = /^(0s(, )?)+$/.test(transitionDuration) || stepped;
      return still && animationName === 'none' ? [] : [el.className.toString()];
    }),
  ]);

/**
 * At most three changes a second in any place. Where words stand none comes and goes: one change is the
 * running time beside them.
 */
const expectCalm = async (app: App, words: string): Promise<void> => {
  const seen = await changesASecond(app, words);
  expect(seen.anywhere).toBeLessThanOrEqual(3);
  expect(seen.words).toBeLessThanOrEqual(1);
};

it('does not flash, nor move where no motion is wanted, and captions stand in their live region', async () => {
  const app = await openApp({ viewport: 'small', context: { reducedMotion: 'reduce' } });
  const { page } = app;
  const baker = new Baker(app);
  const caption = page.locator('.caption');
  await page.locator('.start-grid').waitFor();
  expect(await moving(app)).toEqual([]);
  await baker.press('Where is your dough?');
  await baker.press('Weighing comes next');
  await baker.begin();
  for (let n = 0; n < 4; n += 1) await baker.slab();
  expect(await baker.headline()).toMatch(/^Mix until/);
  await baker.slab();
  await expect.poll(() => baker.headline()).toBe('Let the dough rest');

  // What is said stands in a live region for two seconds at least; then the region waits, empty.
  await expect.poll(() => caption.innerText()).toMatch(/salt goes in/);
  expect(await caption.getAttribute('role')).toBe('status');
  expect(await caption.getAttribute('aria-live')).toBe('polite');
  const said = await caption.innerText();
  await app.turn(1_900);
  expect(await caption.innerText()).toBe(said);
  await app.turn(20_000);
  await expect.poll(() => caption.innerText()).toBe('');
  expect(await caption.evaluate((el) => getComputedStyle(el).display)).not.toBe('none');

  // The running time tells by its digits.
  expect(await moving(app)).toEqual([]);
  const left = await page.locator('.times-number').innerText();
  await app.turn(2_000);
  expect(await page.locator('.times-number').innerText()).not.toBe(left);

  await app.turn(30 * MINUTE);
  await page.locator('.call[data-kind="act"]').waitFor();
  await expect.poll(() => caption.innerText()).toBe('It’s time: the salt goes in.');
  expect(await moving(app)).toEqual([]);
  await expectCalm(app, '.call, .act-headline');
  await baker.hush();
  if ((await page.locator('.return').count()) > 0) await baker.press('I’ve read it');

  // The panel turned over.
  await baker.press('More');
  await baker.tap('.sheet button:has(.control-label:text-is("Timer"))');
  await baker.key('10');
  await baker.noted(() => baker.press('Nuts in the oven'));
  await app.turn(10 * MINUTE + 1_000);
  await page.locator('.sheet[data-tone="hot"]').waitFor();
  expect(await moving(app)).toEqual([]);
  await expectCalm(app, '.sheet h1, .sheet h2, .sheet .slab-label');

  // The measure sees what flashes four times a second.
  await page.evaluate(() => {
    const slab = document.querySelector<HTMLElement>('.sheet .slab')!;
    setInterval(() => (slab.style.opacity = slab.style.opacity === '0' ? '1' : '0'), 125);
  });
  const seen = await changesASecond(app, '.sheet .slab-label');
  expect(seen.anywhere).toBeGreaterThan(3);
  expect(seen.words).toBeGreaterThan(3);
  expectNoFaults(app.faults);
});
