import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { openApp } from './harness/open-app.ts';

/**
 * A page on which every touch is heard of `late` ms after the hand made it: the browser stamps a touch
 * when it is made and hands it over when the page is free.
 */
const busy = async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await app.page.addInitScript(() => {
    const page = window as unknown as { late: number };
    page.late = 0;
    const stamp = (e: Event): void => {
      Object.defineProperty(e, 'timeStamp', { value: performance.now() - page.late });
    };
    for (const type of ['pointerdown', 'pointerup', 'click'])
      window.addEventListener(type, stamp, true);
  });
  await app.page.reload();
  await app.page.locator('.start-grid').waitFor();
  /** A tap that is heard of now. */
  const tap = async (selector: string, late: number): Promise<void> => {
    await app.page.evaluate((ms) => void ((window as unknown as { late: number }).late = ms), late);
    await baker.tapNow(selector);
    await app.page.evaluate(() => void ((window as unknown as { late: number }).late = 0));
  };
  return { app, baker, tap };
};

it('takes a double tap once and two quick keys twice, however late it hears of them', async () => {
  const { app, baker, tap } = await busy();
  await baker.press('How warm is the kitchen?');
  await app.page.locator('.key:text-is("2")').waitFor();
  await baker.beat();
  await baker.beat();
  await tap('.key:text-is("2")', 900);
  await tap('.key:text-is("2")', 750);
  expect(await app.page.locator('.pad-typed').innerText()).toContain('22');
  await baker.tap('.slab');
  await baker.startBaking();
  await baker.slab();
  await baker.slab();
  await baker.slab();

  const before = await app.countRows();
  await app.page.locator('button:has-text("Take that back")').waitFor();
  await baker.beat();
  await baker.noted(() => tap('button:has-text("Take that back")', 100));
  await app.turn(800);
  // Made 0.3 s after the first, while that was being answered.
  await tap('button:has-text("Take that back")', 700);
  await app.turn(1_100);
  expect(await app.countRows()).toBe(before + 1);
  await baker.takeBack();
  expect(await app.countRows()).toBe(before + 2);
});
