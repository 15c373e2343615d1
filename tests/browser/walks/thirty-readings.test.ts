import { expect, it } from 'vitest';
import type { Fact } from '../../../src/core/records/fact.ts';
import { Baker } from '../harness/baker.ts';
import { expectNoFaults } from '../harness/faults.ts';
import { logOf } from '../harness/logged.ts';
import { openApp } from '../harness/open-app.ts';
import { readScreen } from '../harness/screen.ts';

/** The shortest that three presses of one hand can be apart. */
const QUICK_MS = 650;
const SEEN = ['Not at all', 'By a quarter', 'By half'];

it('keeps thirty readings of one minute, and stays usable with a window that means something', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await app.page.locator('.start-grid').waitFor();
  await baker.press('Where is your dough?');
  await baker.press('My dough is in the bowl');
  await baker.begin();
  await app.turn(60 * 60_000);
  await baker.press('I’ve read it');
  await baker.beat();
  const before = await app.countRows();
  const began = (await readScreen(app.page)).now;
  const quick = async (label: string) => {
    const wanted = `button:has-text("${label}")`;
    // Seen first, then the hand's way there: turned before it is drawn, it would still be fresh.
    await app.page.locator(wanted).first().waitFor();
    await app.turn(QUICK_MS);
    await baker.tapNow(wanted);
  };
  for (let n = 0; n < 30; n += 1) {
    await quick('New reading');
    await quick('Dough rise, by eye');
    await quick(SEEN[n % SEEN.length]!);
    await expect.poll(() => app.countRows(), { interval: 10 }).toBe(before + n + 1);
  }
  expect((await readScreen(app.page)).now - began).toBeLessThanOrEqual(60_000);

  const readings = (await logOf(app)).flatMap(({ fact }): Fact[] =>
    fact.kind === 'reading' ? [fact] : [],
  );
  expect(readings).toHaveLength(30);
  expect(new Set(readings.map(({ id }) => id)).size).toBe(30);
  await app.turn(1_000);
  const { left, now, call } = await readScreen(app.page);
  expect(call).toBeNull();
  expect(left).toBeGreaterThan(10 * 60_000);
  expect(left).toBeLessThan(12 * 60 * 60_000);
  const { marks } = (await logOf(app)).at(-1)!.position.bakes['bake-1']!;
  const { earliest = NaN, likely = NaN, latest = NaN } = marks;
  expect(earliest).toBeLessThanOrEqual(likely);
  expect(likely).toBeLessThanOrEqual(latest);
  expect(latest).toBeGreaterThan(now);
  // Thirty glances in a minute are one look: no false precision comes of them.
  expect(latest - earliest).toBeGreaterThan(30 * 60_000);
  expect(latest - now).toBeLessThan(24 * 60 * 60_000);
  expect(await app.page.locator('.window').innerText()).not.toMatch(/NaN|Invalid|undefined/);
  await app.screenshot('thirty-readings');

  // Nothing is stuck: the last one goes back, all are there to be read, and the look comes.
  await baker.takeBack();
  await baker.press('New reading');
  await baker.press('Readings so far');
  expect(await app.page.locator('.reading-row').count()).toBeGreaterThan(3);
  await baker.press('Back to the bench');
  await baker.slab();
  expect(await baker.headline()).not.toBe('Leave the dough to rise');
  await app.reopen();
  await app.turn(100);
  await app.page.locator('.act-headline').first().waitFor();
  expect((await logOf(app)).filter(({ fact }) => fact.kind === 'reading')).toHaveLength(30);
  expectNoFaults(app.faults);
});
