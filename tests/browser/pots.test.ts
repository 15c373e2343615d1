import { expect, it } from 'vitest';
import type { Fact } from '../../src/core/records/fact.ts';
import { HOUR, MINUTE } from '../../src/core/units.ts';
import { RECIPE } from '../machines/support/recipe.ts';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { hotOven, openAt } from './harness/hot-oven.ts';
import type { App } from './harness/open-app.ts';
import { Walker } from './harness/walker.ts';

const facts = async (app: App): Promise<Extract<Fact, { kind: 'press' }>[]> =>
  ((await app.storeRows()) as { fact: Fact }[]).flatMap(({ fact }) =>
    fact.kind === 'press' ? fact : [],
  );

/** The last loaf out, as the page of the pots says it. */
const lastOut = async (baker: Baker): Promise<number> => {
  await baker.press('More');
  await baker.tap('.sheet button:has-text("Show the pots")');
  await baker.page.locator('.lanes-chart').waitFor();
  const words = await baker.page.locator('.pots-last').innerText();
  const [, hours, minutes] = /^Last loaf out at (\d\d):(\d\d)\. Bag from \d\d:\d\d\.$/.exec(words)!;
  await baker.press('Back to the bench');
  await baker.page.locator('.sheet').waitFor({ state: 'detached' });
  const midnight = Math.floor((await baker.page.evaluate(() => Date.now())) / (24 * HOUR));
  return midnight * 24 * HOUR + Number(hours) * HOUR + Number(minutes) * MINUTE;
};

it('brings twelve loaves out of two pots: one slow, one pot broken half-way, forty minutes away', async () => {
  const app = await openAt(hotOven(['left', 'right'], 12));
  const baker = new Baker(app);
  const walker = new Walker(baker, { takeBack: [], reload: [] });
  const done = async (act: string): Promise<number> =>
    (await facts(app)).filter((fact) => fact.act === act).length;

  const told: Record<string, number> = {};
  await walker.clear();
  // The first loaf is slow: it goes last, and the voice says so.
  for (const sign of ['A little', 'Springs back']) await baker.answer(sign);
  while ((await done('pokeNotYet')) === 0) await walker.act(await walker.clear());
  await app.turn(200);
  await expect
    .poll(() => app.page.locator('.caption').innerText())
    .toContain('Loaf one is slow. It goes last.');
  for (let steps = 0; (await done('unloaded')) < 12 && steps < 600; steps += 1) {
    const seen = await walker.clear();
    if (seen.left === null) {
      await walker.act(seen);
      continue;
    }
    const [loaded, unloaded] = [await done('loaded'), await done('unloaded')];
    const asks = async (when: boolean, name: string): Promise<boolean> => {
      if (!when || name in told) return false;
      told[name] = await lastOut(baker);
      return true;
    };
    if (await asks(loaded === 2, 'begun')) {
      // Nobody is there for forty minutes after the lid has called.
      await app.turn(seen.left + 40 * MINUTE);
      continue;
    }
    if (await asks(loaded > 2 && unloaded >= 2, 'back')) {
      await baker.press('More');
      await baker.tap('.sheet button:has-text("Show the pots")');
      await baker.press('Stop using a pot');
      await baker.press('Right pot is out');
      await baker.noted(() => baker.press('Yes, no more'));
      await app.page.locator('.lanes-chart').waitFor();
      await baker.press('Back to the bench');
      await app.page.locator('.sheet').waitFor({ state: 'detached' });
      continue;
    }
    if ('back' in told && (await asks(true, 'broken'))) continue;
    if (await asks(loaded === 12 && unloaded === 11, 'last')) continue;
    await app.turn(seen.left);
  }

  const all = await facts(app);
  const loads = all.filter(({ act }) => act === 'loaded');
  const order = loads.flatMap(({ loaves }) => loaves ?? []);
  expect(order).toEqual([...Array.from({ length: 11 }, (_, i) => `a${i + 2}`), 'a1']);
  expect(all.filter(({ act }) => act === 'unloaded')).toHaveLength(12);
  // Each lid called once, at its minute, in the pot it was of.
  const rows = (await app.storeRows()) as { fact: Fact }[];
  const lids = rows
    .flatMap(({ fact }) => (fact.kind === 'heard' ? fact.call : []))
    .filter((call) => call.includes(':lift:'));
  const due = loads.map(({ lane, at }) => `${lane}:lift:${at + RECIPE.process.lidded * MINUTE}`);
  expect(lids.toSorted()).toEqual(due.toSorted());
  expect(all.filter(({ act }) => act === 'lidOff')).toHaveLength(12);
  // After the pot broke nothing more went into it.
  const broke = all.findIndex(({ act }) => act === 'potOut');
  expect(all.slice(broke).flatMap(({ act, lane }) => (act === 'loaded' ? lane : []))).not.toContain(
    'lane.right',
  );
  // What was told moved with the facts, and came true to the minutes that the presses took.
  const really = all.findLast(({ act }) => act === 'unloaded')!.at;
  const off = (name: string): number => (really - told[name]!) / MINUTE;
  const moved = (from: string, to: string): number => (told[to]! - told[from]!) / MINUTE;
  expect(off('last')).toBeGreaterThanOrEqual(0);
  expect(off('last')).toBeLessThanOrEqual(2);
  expect(Math.abs(off('broken'))).toBeLessThanOrEqual(8);
  expect(moved('begun', 'back')).toBeGreaterThanOrEqual(35);
  expect(moved('back', 'broken')).toBeGreaterThanOrEqual(60);
  expectNoFaults(app.faults);
});
