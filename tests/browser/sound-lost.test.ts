import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { oneRests } from './harness/left-kitchen.ts';
import { MM } from './harness/look.ts';
import { openApp, START, VIEWPORTS, type ViewportName } from './harness/open-app.ts';
import { settled } from './harness/settled.ts';
import { putRows } from './harness/put-rows.ts';

/** From then on the audio clock of this page stands still though it says that it runs, or goes on. */
const STAND = (stands: boolean): void => {
  const own = globalThis as unknown as { standing?: number | null; patched?: true };
  const known = Object.getOwnPropertyDescriptor(BaseAudioContext.prototype, 'currentTime')!;
  if (!own.patched) {
    own.patched = true;
    Object.defineProperty(BaseAudioContext.prototype, 'currentTime', {
      get(this: BaseAudioContext) {
        const now = known.get!.call(this) as number;
        if (own.standing === null || own.standing === undefined) return now;
        return (own.standing ||= now);
      },
    });
  }
  own.standing = stands ? 0 : null;
};

it('says on the screen that its output is gone, and one tap brings it back', async () => {
  const left = oneRests(START - 12 * 60 * 60_000);
  const app = await openApp({ clock: left.at });
  await app.page.evaluate(putRows(left.records));
  await app.reopen();
  const baker = new Baker(app);
  const ear = (words: string) => app.page.locator(`.ear:has-text("${words}")`);
  await baker.tap('.ear:has-text("Tap to arm sound")');
  await ear('Sound is on').waitFor();
  const slab = () => app.page.locator('.slab').boundingBox();
  const before = await slab();
  await app.page.evaluate(STAND, true);
  for (let n = 0; n < 5; n += 1) await app.turn(2_000);
  await ear('Sound lost: tap here').waitFor();
  expect(await slab()).toEqual(before);
  for (const view of Object.keys(VIEWPORTS) as ViewportName[]) {
    await app.setViewport(view);
    for (const text of ['bigger', 'plain']) {
      await app.page.evaluate((t) => (document.documentElement.dataset['text'] = t), text);
      await settled(app.page);
      await app.screenshot(`sound-lost-${view}-${text}`);
      const found = await ear('Sound lost').evaluate((el) => ({
        least: Math.min(el.clientWidth, el.clientHeight),
        clipped: el.scrollWidth > el.clientWidth || el.scrollHeight > el.clientHeight,
      }));
      expect.soft(found.clipped, `${view}, ${text}`).toBe(false);
      expect.soft(found.least * MM[view], `${view}, ${text}`).toBeGreaterThanOrEqual(21.5);
    }
    expect.soft(await app.axe(), view).toEqual([]);
  }
  await app.setViewport('wide');
  const rows = await app.countRows();
  await app.page.evaluate(STAND, false);
  await baker.tap('.ear:has-text("Sound")');
  for (let n = 0; n < 2; n += 1) await app.turn(1_500);
  await ear('Sound is on').waitFor();
  expect(await app.countRows()).toBe(rows);
  expectNoFaults(app.faults);
});
