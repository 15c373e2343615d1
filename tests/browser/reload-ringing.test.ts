import { expect, it } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { DUE, lidAndRest } from './harness/left-kitchen.ts';
import { openApp, START } from './harness/open-app.ts';
import { putRows } from './harness/put-rows.ts';

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
  ).toEqual(['heard oven:lift', 'heard b:mix.salt']);
  await app.reopen();
  await app.page.locator('.act-headline').first().waitFor();
  await app.turn(MINUTE);
  expect(await app.page.locator('.call').count()).toBe(0);
  expect(await app.page.locator('.bake-control[data-late]').count()).toBe(1);
  expect(await app.countRows()).toBe(left.records.length + 2);
  expectNoFaults(app.faults);
}, 60_000);
