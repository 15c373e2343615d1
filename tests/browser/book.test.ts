import { expect, it } from 'vitest';
import type { Fact } from '../../src/core/records/fact.ts';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, type App } from './harness/open-app.ts';
import { settled } from './harness/settled.ts';

const factsOf = async (app: App): Promise<Fact[]> =>
  ((await app.storeRows()) as { fact: Fact }[]).map(({ fact }) => fact);

it('copies a formula, changes its salt by taps alone, and bakes it from the start; the first version stays', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await baker.page.locator('.start-grid').waitFor();
  await baker.press('Book of formulas');
  await baker.press('Lane wheat');
  await baker.press('More');
  await baker.noted(() => baker.press('Make a copy'));
  await baker.page.locator('h1:has-text("Lane wheat 2")').waitFor();
  await baker.press('Salt');
  await baker.press('Of all flour');
  await baker.key('1.7');
  await expect
    .poll(() => baker.page.locator('.pad-hint').innerText())
    .toMatch(/^That is 1\d\.\d\sg$/);
  await baker.tap('.slab');
  // What is half changed outlives a reload, once it is on the disk.
  await expect
    .poll(async () => JSON.stringify(await app.storeRows('settings')))
    .toMatch(/"salt":1\.7\b/);
  await app.reopen();
  await baker.page.locator('.start-grid').waitFor();
  await baker.press('Book of formulas');
  await baker.press('Lane wheat 2');
  await baker.noted(() => baker.tap('.slab:has-text("Keep it")'));
  await baker.page.locator('.slab:has-text("That’s it")').waitFor();
  await baker.tap('.slab');
  await baker.tap('.slab');
  await baker.press('Which bread?');
  await baker.press('Lane wheat 2');
  await baker.press('How warm is the kitchen?');
  await baker.key('22');
  await baker.tap('.slab');
  await baker.startBaking();
  const facts = await factsOf(app);
  const kept = facts.flatMap((fact) => (fact.kind === 'formula' ? fact.formula : []));
  expect(kept.map(({ id, version, salt }) => [id, version, salt])).toEqual([
    ['lane-wheat-2', 1, 1.9],
    ['lane-wheat-2', 2, 1.7],
  ]);
  const started = facts.flatMap((fact) => (fact.kind === 'start' ? fact.recipe.formula : []));
  expect(started).toMatchObject([
    { id: 'lane-wheat-2', version: 2, salt: 1.7, convention: 'whole' },
  ]);
  expectNoFaults(app.faults);
});

it('shows breads to press on every tablet, in bigger words too', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await app.page.locator('.start-grid').waitFor();
  await baker.press('Book of formulas');
  await app.page.locator('.book-entry').first().waitFor();
  for (const view of ['wide', 'small', 'tall'] as const) {
    await app.setViewport(view);
    await app.page.evaluate(() => (document.documentElement.dataset['text'] = 'bigger'));
    await app.turn(50);
    await settled(app.page);
    const inSight = await app.page.evaluate(() => {
      const { clipPath } = getComputedStyle(document.querySelector('.bench-inner')!);
      const [, , below] = /^inset\((\S+)px \S+ (\S+)px\)$/.exec(clipPath) ?? [];
      const foot = Math.min(
        document.querySelector('.bench-words')!.getBoundingClientRect().bottom,
        document.querySelector('.bench-inner')!.getBoundingClientRect().bottom - Number(below ?? 0),
      );
      return [...document.querySelectorAll('.book-entry')].filter(
        (el) => el.getBoundingClientRect().bottom <= foot + 1,
      ).length;
    });
    expect.soft(inSight, view).toBeGreaterThanOrEqual(2);
  }
});
