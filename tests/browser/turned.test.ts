import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { beginBread } from './harness/begin-bread.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, type App } from './harness/open-app.ts';

const LYING = { width: 1280, height: 800 };
const UPRIGHT = { width: 800, height: 1280 };

interface Size {
  readonly width: number;
  readonly height: number;
}
/**
 * The tablet is turned, with whatever touches it. The page hears of it with its next frame, which a busy
 * machine draws late, while the clock that the test turns waits for nobody.
 */
const turn = async (app: App, from: Size, to: Size) => {
  const heard = app.page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        matchMedia('(orientation: portrait)').addEventListener('change', () => resolve(), {
          once: true,
        });
      }),
  );
  expect(app.page.viewportSize()).toEqual(from);
  await app.page.setViewportSize(to);
  await heard;
  await app.turn(100);
};
/** A finger comes down in the middle of what is found, and stays. */
const down = async (baker: Baker, css: string): Promise<void> => {
  await baker.beat();
  const box = (await baker.page.locator(css).first().boundingBox())!;
  await baker.page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await baker.page.mouse.down();
};

it('turned in the middle of an act, a number or a hold: nothing is lost and nothing pressed', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await app.page.locator('.start-grid').waitFor();
  await beginBread(baker, 'Cherry and hazelnut', 'My loaves are ready to bake');
  const { page } = app;
  const facts = await app.countRows();

  // A hold whose slab goes from under the finger, and one whose slab stays there.
  await page.locator('.hold').waitFor();
  for (const [from, to] of [
    [LYING, UPRIGHT],
    [UPRIGHT, LYING],
  ] as const) {
    await down(baker, '.hold');
    await app.turn(700);
    await turn(app, from, to);
    await app.turn(2_000);
    await page.mouse.up();
    await app.turn(500);
    expect(await page.locator('.hold').count(), 'the gate is shut').toBe(1);
  }
  await baker.hold();
  await expect.poll(() => page.locator('.hold').count()).toBe(0);

  // An act, and what lies where its slab was.
  const headline = await baker.headline();
  await down(baker, '.slab');
  await turn(app, LYING, UPRIGHT);
  await page.mouse.up();
  await app.turn(1_000);
  expect(await baker.headline()).toBe(headline);
  expect(await app.countRows()).toBe(facts);
  await turn(app, UPRIGHT, LYING);

  // Half a number.
  await baker.press('New reading');
  await baker.key('24');
  const typed = () => page.locator('.pad-typed').innerText();
  await turn(app, LYING, UPRIGHT);
  expect(await typed()).toBe('24');
  await baker.key('5');
  await turn(app, UPRIGHT, LYING);
  expect(await typed()).toBe('245');
  expect(await app.countRows()).toBe(facts);
  await baker.press('Back to the bench');
  await baker.slab();
  expect(await app.countRows()).toBe(facts + 1);
  expectNoFaults(app.faults);
});
