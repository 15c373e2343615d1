import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { MICROPHONE } from './harness/microphone.ts';
import { openApp, type ViewportName } from './harness/open-app.ts';
import { tabletsNow } from './harness/tablets.ts';
import { settled } from './harness/settled.ts';

declare const mic: { readonly seconds: number; readonly live: number };

const MM: Readonly<Record<ViewportName, number>> = { wide: 0.17, small: 0.1925, tall: 0.1785 };

it('records a clip in a grown-up’s voice, keeps it on the tablet and says it from then on', async () => {
  const app = await openApp();
  await app.context.addInitScript(MICROPHONE);
  await app.reopen();
  const baker = new Baker(app);
  const measure = async (name: string) => {
    for (const view of tabletsNow()) {
      await app.setViewport(view);
      for (const text of ['bigger', 'plain']) {
        await app.page.evaluate(
          ([size, theme]) => Object.assign(document.documentElement.dataset, { text: size, theme }),
          [text, view === 'small' ? 'dark' : 'light'],
        );
        await app.turn(100);
        await settled(app.page);
        const found = await app.page.evaluate(() => ({
          over: document.documentElement.scrollHeight - innerHeight,
          wide: document.documentElement.scrollWidth - innerWidth,
          slabs: document.querySelectorAll('.slab').length,
          further: document.querySelectorAll('.bench-further').length,
          sizes: [...document.querySelectorAll('.control')].map((el) => {
            const { width, height } = el.getBoundingClientRect();
            return Math.min(width, height);
          }),
        }));
        const at = `${name} at ${view}, ${text}`;
        expect.soft(found, at).toMatchObject({ over: 0, wide: 0, slabs: 1 });
        if (text === 'plain') expect.soft(found.further, at).toBe(0);
        expect.soft(found.sizes.length - found.further, at).toBeLessThanOrEqual(6);
        for (const px of found.sizes) expect.soft(px * MM[view], at).toBeGreaterThanOrEqual(22);
      }
      await app.screenshot(`record-${name}-${view}`);
    }
    await app.setViewport('wide');
    expect.soft(await app.axe(), name).toEqual([]);
  };
  const toGate = async () => {
    await app.page.locator('.start-grid').waitFor();
    await baker.tap('.bench-controls .control:has-text("Kitchen")');
    for (const label of ['This tablet', 'Sound check', 'The voice', 'Record it yourself'])
      await baker.press(label);
    await app.page.locator('.hold').waitFor();
  };
  await toGate();
  await measure('gate');
  await baker.hold();
  await app.page.locator('.control:has-text("Before the dough")').waitFor();
  await measure('stages');
  await baker.press('Before the dough');
  await measure('list');
  await baker.tap('.kitchen-grid .control');
  await baker.tap('.slab:has-text("Record")');
  await app.page.locator('.act-care:has-text("not allowed")').waitFor();
  await app.screenshot('record-denied');
  await app.page.evaluate('allowed = true');
  await baker.tap('.slab:has-text("Record")');
  await app.page.locator('.slab:has-text("Stop")').waitFor();
  await expect
    .poll(() => app.page.evaluate(() => mic.seconds), { timeout: 10_000 })
    .toBeGreaterThan(1);
  expect(await app.page.evaluate(() => mic.live)).toBe(1);
  await app.screenshot('record-listens');
  await baker.tap('.slab:has-text("Stop")');
  await app.page.locator('.slab:has-text("Keep it")').waitFor();
  expect(await app.page.evaluate(() => mic.live)).toBe(0);
  await measure('held');
  await baker.tap('.slab:has-text("Keep it")');
  await app.page.locator('.slab:has-text("Record")').waitFor();
  await app.reopen();
  await toGate();
  await baker.hold();
  await app.page.locator('.control:has-text("Before the dough"):has-text("1 of")').waitFor();
  expectNoFaults(app.faults);
});
