import { expect, inject, it, onTestFinished } from 'vitest';
import { serve } from '../../src/serve/serve.ts';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { HEAR_FILES, HEAR_SCRIPT, heard, stretches } from './harness/hear.ts';
import { DUE, lidAndRest } from './harness/left-kitchen.ts';
import { openApp, START, VIEWPORTS, type ViewportName } from './harness/open-app.ts';
import { putRows } from './harness/put-rows.ts';
import { settled } from './harness/settled.ts';
import { openTab } from './harness/tab.ts';

const MINUTE = 60_000;
/** Both are due by then: the lid, and the salt of the other dough. */
const LATE = 8 * 60;

it('reloaded while two calls ring: the same two, late, hushed once each, and never again', async () => {
  const left = lidAndRest(START - 12 * 60 * MINUTE);
  const app = await openApp({ clock: left.at });
  await app.page.evaluate(putRows(left.records));
  await app.reopen();
  const baker = new Baker(app);
  await app.page.locator('.act-headline').first().waitFor();
  await app.turn(LATE * MINUTE);
  const rings = async (minutes: number) => {
    await app.page.locator('.call[data-kind=hot]').waitFor();
    expect(await app.page.locator('.call').count()).toBe(1);
    const lid = minutes - DUE.lid;
    const past = `+${Math.floor(lid / 60)} h ${String(lid % 60).padStart(2, '0')}`;
    await app.page.locator('.times-number', { hasText: past }).waitFor();
    expect(await app.page.locator('.bake-control[data-late]').count()).toBe(1);
  };
  await rings(LATE);
  for (let n = 1; n <= 2; n += 1) {
    await app.reopen();
    await app.page.locator('.act-headline').first().waitFor();
    await app.turn(MINUTE);
    await rings(LATE + n);
  }
  // Nobody pressed: nothing was written, and nothing that was is said again.
  expect(await app.countRows()).toBe(left.records.length);
  expect(await app.page.locator('.caption').innerText()).toBe('');
  await baker.hush();
  await baker.noted(async () => {
    await baker.beat();
    await app.page.touchscreen.tap(400, 500);
  });
  const calls = ((await baker.facts()) as { kind: string; call?: string }[]).slice(-2);
  expect(
    calls.map(({ kind, call }) => `${kind} ${call?.split(':').slice(0, 2).join(':')}`),
  ).toEqual(['heard lane.pot:lift', 'heard b:mix.salt']);
  await app.reopen();
  await app.page.locator('.act-headline').first().waitFor();
  await app.turn(MINUTE);
  expect(await app.page.locator('.call').count()).toBe(0);
  expect(await app.page.locator('.bake-control[data-late]').count()).toBe(1);
  expect(await app.countRows()).toBe(left.records.length + 2);
  expectNoFaults(app.faults);
});

/** In real time, where no script counts as a touch: the lid was due so long ago, ms. */
const AGO = 20_000;
/** A page of the built app, loaded in the middle of a lid's call, as heard from outside. */
const loadedWhileItRings = async (flags: readonly string[]) => {
  const server = await serve({ dir: inject('site'), extra: HEAR_FILES });
  onTestFinished(() => server.close());
  const tab = await openTab(server.url, HEAR_SCRIPT, { flags });
  const count = (selector: string) =>
    tab.evaluate(`document.querySelectorAll('${selector}').length`);
  const text = (selector: string) =>
    tab.evaluate(`document.querySelector('${selector}')?.textContent ?? ''`);
  const [ear, slab] = [() => text('.ear'), () => text('.slab')];
  await expect.poll(ear).not.toBe('');
  const due = lidAndRest(0).at + DUE.lid * MINUTE;
  const { records } = lidAndRest(Date.now() - AGO - due);
  await tab.evaluate(putRows(records));
  await tab.tell('Page.reload');
  await expect.poll(() => count('.call[data-kind=hot]')).toBe(1);
  const rows = () =>
    tab.evaluate(`new Promise((then, no) => {
      const asked = indexedDB.open('loafward');
      asked.onerror = no;
      asked.onsuccess = () => {
        const counted = asked.result.transaction('log').objectStore('log').count();
        counted.onsuccess = () => { asked.result.close(); then(counted.result); };
        counted.onerror = no;
      };
    })`);
  const sounds = async (after = 0) =>
    stretches((await heard(tab)).filter(({ wall }) => wall > after)).length > 0;
  const has = records.length;
  /** Anywhere, on nothing that may be pressed. */
  const touch = () => tab.tap('.act-headline');
  return { ear, slab, rows, has, sounds, touch, calls: () => count('.call') };
};

it('reloaded while it rings, without leave to sound: says so, sounds at the first touch, hushes at the second', async () => {
  const { ear, slab, rows, has, sounds, touch, calls } = await loadedWhileItRings([]);
  await expect.poll(ear).toContain('Sound off: touch');
  expect(await slab()).toContain('Sound is off until you touch');
  expect(await sounds()).toBe(false);
  await touch();
  await expect.poll(ear).toContain('Sound is on');
  expect(await slab()).not.toContain('Sound');
  await expect.poll(() => sounds()).toBe(true);
  // It rings on, tone for tone: what was never heard is not told to be heard.
  const began = Date.now();
  await expect.poll(() => sounds(began + 1_000), { timeout: 30_000 }).toBe(true);
  expect([await rows(), await calls()]).toEqual([has, 1]);
  await touch();
  await expect.poll(rows).toBe(has + 1);
  await expect.poll(calls).toBe(0);
});

it('reloaded while it rings, where the browser lets it: sounds at once, and the first touch hushes', async () => {
  const leave = ['--autoplay-policy=no-user-gesture-required'];
  const { ear, rows, has, sounds, touch, calls } = await loadedWhileItRings(leave);
  await expect.poll(() => sounds()).toBe(true);
  expect(await ear()).toContain('Sound is on');
  expect(await rows()).toBe(has);
  await touch();
  await expect.poll(rows).toBe(has + 1);
  await expect.poll(calls).toBe(0);
});

it('says on every tablet that its sound is off, in bigger words too, and nothing else moves', async () => {
  const left = lidAndRest(START - 12 * 60 * MINUTE);
  const app = await openApp({ clock: left.at });
  // Scripts count as touches here: this browser never lets it sound.
  await app.context.addInitScript(() => {
    Object.defineProperty(AudioContext.prototype, 'state', { get: () => 'suspended' });
    AudioContext.prototype.resume = () => new Promise(() => {});
  });
  await app.page.evaluate(putRows(left.records));
  await app.reopen();
  await app.page.locator('.act-headline').first().waitFor();
  await app.turn((DUE.lid + 1) * MINUTE);
  const ear = app.page.locator('.ear:has-text("Sound off: touch")');
  const slab = app.page.locator('.slab:has-text("Sound is off until you touch")');
  await slab.waitFor();
  await ear.waitFor();
  for (const view of Object.keys(VIEWPORTS) as ViewportName[])
    for (const text of ['plain', 'bigger']) {
      await app.setViewport(view);
      await app.page.evaluate((t) => (document.documentElement.dataset['text'] = t), text);
      await settled(app.page);
      await app.screenshot(`unheard-${view}-${text}`);
      for (const one of [ear, slab]) {
        const clipped = await one.evaluate(
          (el) => el.scrollWidth > el.clientWidth || el.scrollHeight > el.clientHeight,
        );
        expect.soft(clipped, `${view}, ${text}`).toBe(false);
      }
      if (text === 'plain') expect.soft(await app.axe(), view).toEqual([]);
    }
});
