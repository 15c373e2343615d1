import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, VIEWPORTS, type App, type ViewportName } from './harness/open-app.ts';
import { PedalBaker } from './harness/pedal-baker.ts';
import { WHOLE_BAKE } from './harness/whole-bake.ts';

/** Teaches the keys on the Kitchen's own page, by touch. */
const teach = async (app: App): Promise<void> => {
  const hand = new Baker(app);
  await app.page.locator('.start-grid').waitFor();
  await hand.tap('.bench-controls .control:has-text("Kitchen")');
  await hand.press('This tablet');
  await hand.press('Pedal or clicker');
  for (const [does, key] of Object.entries({
    'That’s done': PedalBaker.KEYS.done,
    'Next answer': PedalBaker.KEYS.next,
    'Take that back': PedalBaker.KEYS.takeBack,
  })) {
    await hand.press(does);
    await app.page.locator('.act-headline', { hasText: 'Press the pedal once' }).waitFor();
    // What types numbers is not taken.
    await app.page.keyboard.press('7');
    await app.page.locator(':text("That key types or moves")').waitFor();
    await app.page.keyboard.press(key);
    await app.page.locator('.act-headline', { hasText: 'Pedal or clicker' }).waitFor();
  }
  for (const view of Object.keys(VIEWPORTS) as ViewportName[]) {
    await app.setViewport(view);
    await app.screenshot(`pedal-${view}`);
    const over = await app.page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
    expect(over, view).toBeLessThanOrEqual(0);
    expect(await app.page.locator('.bench-further').count(), view).toBe(0);
  }
  expect(await app.axe()).toEqual([]);
  await app.setViewport('wide');
  for (let n = 0; n < 3; n += 1) await hand.tap('.slab');
  await app.page.locator('.start-grid').waitFor();
};

/** A tablet that has nothing to sound with: no audio, no voices, no microphone. */
const silence = async (app: App): Promise<void> => {
  await app.context.addInitScript(() => {
    for (const name of ['AudioContext', 'webkitAudioContext', 'Audio', 'speechSynthesis'])
      Object.defineProperty(window, name, { value: undefined });
    Object.defineProperty(navigator, 'mediaDevices', { value: undefined });
  });
  await app.reopen();
};

it('walks a whole bake by pedal and by sight alone, gates by hand', async () => {
  const app = await openApp();
  await silence(app);
  await teach(app);
  const baker = new PedalBaker(app);
  await baker.begin();
  // That nothing will be heard is told, with what to do about it, until it is closed.
  await baker.press('Tap to arm');
  await app.page.locator('.notice', { hasText: 'Set a second timer for every hot step' }).waitFor();
  await app.screenshot('no-sound');
  await baker.press('Close');
  let gates = 0;
  for (const { name, go } of WHOLE_BAKE) {
    const before = await app.countRows();
    if (name === 'levain-feed-1') {
      // A key that is stuck, and one that sends three at a step, press once.
      await baker.beat();
      await app.page.keyboard.down('PageDown');
      await baker.beat();
      for (let n = 0; n < 3; n += 1) {
        await app.page.keyboard.down('PageDown');
        await baker.beat();
      }
      await app.page.keyboard.up('PageDown');
      expect(await app.countRows()).toBe(before + 1);
      for (const key of ['b', 'PageDown', 'PageUp']) await app.page.keyboard.press(key);
      await expect.poll(() => app.countRows()).toBe(before + 2);
      await baker.beat();
      expect((await baker.facts()).at(-1)?.kind).toBe('takeBack');
    }
    if ((await app.page.locator('.hold').count()) > 0) {
      // No pedal opens a gate, however often it is trodden; it says so.
      gates += 1;
      await baker.beat();
      await baker.step('done');
      await baker.beat();
      await baker.step('done');
      await app.page.locator(':text("This opens by hand only.")').first().waitFor();
      expect(await app.page.locator('.hold').count(), name).toBe(1);
      expect(await app.countRows(), name).toBe(before);
    }
    await go(baker);
  }
  expect(gates).toBeGreaterThan(5);
  expect((await baker.facts()).at(-1)?.act).toBe('noted');
  expectNoFaults(app.faults);
});
