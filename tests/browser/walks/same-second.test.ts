import { expect, it } from 'vitest';
import { Baker } from '../harness/baker.ts';
import { expectNoFaults } from '../harness/faults.ts';
import { actsOf, logOf } from '../harness/logged.ts';
import { ManyWalker } from '../harness/many-walker.ts';
import { openApp } from '../harness/open-app.ts';
import { tabletsNow } from '../harness/tablets.ts';

const MINUTE = 60_000;

it('rings for two bakes due in the same second one after the other, and loses neither', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  const walker = new ManyWalker(baker, { takeBack: [], reload: [] });
  const join = async (where: string, bread: string, kitchen: string) => {
    await app.page.locator('.start-grid').waitFor();
    await baker.press('Where is your dough?');
    await baker.press(where);
    await baker.begin(kitchen, bread);
  };
  const goOnTo = async (headline: string) => {
    for (let n = 0; n < 30; n += 1) {
      const seen = await walker.clear();
      if (seen.headline === headline) return;
      if (seen.left === null) await walker.act(seen);
      else await app.turn(seen.left);
    }
    throw new Error(`The bench never says “${headline}”.`);
  };

  // So warm a kitchen leaves its loaves 20 min on the counter.
  await join('My dough is ready to divide', 'Olive and seed', '27');
  walker.alone = 'Olive';
  await goOnTo('Lay each loaf in its basket');
  await baker.tap('.bench-ear .control');
  await baker.press('To the start');
  await join('Weighing comes next', 'Cherry and hazelnut', '22');
  await goOnTo('Mix until no flour is dry');
  const mixed = await walker.act(await walker.clear());
  await walker.clear();
  await walker.goTo('Olive');
  // The rest is 30 minutes and the counter 20: both end at the same millisecond.
  await app.turn(mixed.at + 10 * MINUTE - (await walker.look()).now);
  const laid = await walker.noted(() => baker.tapNow('.slab'));
  expect(laid.at).toBe(mixed.at + 10 * MINUTE);
  await app.turn(20 * MINUTE + 100);

  const calling = async (bake: string, headline: string, other: string) => {
    await expect.poll(async () => (await walker.look()).headline).toBe(headline);
    const seen = await walker.look();
    expect(seen).toMatchObject({ call: 'act', others: [{ name: other, late: true }] });
    expect(await app.page.locator('.call').count()).toBe(1);
    await expect.poll(() => app.page.locator('.caption').innerText()).toContain(`${bake} bake`);
    for (const view of tabletsNow()) {
      await app.setViewport(view);
      await app.screenshot(`same-second-${bake}-${view}`);
      expect(await app.axe(), `${bake}, ${view}`).toEqual([]);
    }
    await app.setViewport('wide');
    await baker.hush();
  };
  await calling('Olive', 'Put the loaves in the fridge', 'Cherry');
  await calling('Cherry', '17 g salt', 'Olive');

  const quiet = await walker.clear();
  expect(quiet).toMatchObject({ call: null, others: [{ name: 'Olive', late: true }] });
  const salt = await walker.act(quiet);
  expect(salt).toMatchObject({ act: 'answer', item: 'salt' });
  await walker.act(await walker.clear());
  await walker.clear();
  await walker.goTo('Olive');
  expect(await walker.act(await walker.clear())).toMatchObject({ act: 'inFridge' });
  const left = await walker.clear();
  expect(left.others).toMatchObject([{ name: 'Cherry', late: false }]);
  const records = await logOf(app);
  expect(actsOf(records, 'bake-1').at(-1)).toBe('inFridge');
  expect(records.at(-1)!.position.attention).toMatchObject({ heard: [] });
  expectNoFaults(app.faults);
});
