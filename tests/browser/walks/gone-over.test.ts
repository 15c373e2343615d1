import { expect, it } from 'vitest';
import { MINUTE } from '../../../src/core/units.ts';
import { DoughWalk } from '../harness/dough-walk.ts';
import { expectNoFaults } from '../harness/faults.ts';

/** Words of a wait: none may stand where a dough has gone over. */
const WAITS = /next look|leave the|let the (dough|loaves)|to go\b|give it time/i;

it('gives a dough that has fallen a new goal, whole: how hot, how long, and no more waiting', async () => {
  const walk = await DoughWalk.begin('24', 'My dough is in the bowl');
  const { app, baker } = walk;
  await app.turn(100 * MINUTE);
  await walk.backAgain();
  // Read long before any hour is due: it is looked at now.
  await walk.read('Edge and bubbles', 'Fallen', 'Some');
  await app.page.locator('.call').waitFor();
  await walk.see('D1-called');
  await baker.hush();
  await walk.said();
  expect(await walk.headline()).toBe('How far has it risen?');
  await walk.tile('By half');
  await walk.tile('Runny, strings');
  await walk.tile('Sticky');
  const over = 'It has fallen and runs: bake it flat now. You may still divide it.';
  expect(await walk.detail()).toBe(over);
  expect(await walk.said()).toContain(over);
  expect(await walk.slabSays()).toBe('Gone over then bake it flat');
  expect(await walk.tiles()).toEqual(['Go on anyway']);
  await walk.see('D2-over');

  await walk.tile('Go on anyway');
  expect(await walk.headline()).toBe('Divide into 900 g pieces');
  expect((await walk.acts()).at(-1)).toBe('bulkReady');
  await walk.takeBack();
  await walk.said();

  await walk.slab();
  await walk.see('D3-gate');
  expect(await walk.text('.gate-task')).not.toMatch(/lid/);
  await baker.openGate();
  expect(await walk.headline()).toBe('Bake it flat in a tray');
  expect(await walk.detail()).toMatch(/oven to 220 °C\. .*oiled tray, 20 to 25 minutes\.$/);
  expect(await walk.said()).toMatch(/hundred and twenty degrees now\. .*twenty-five minutes\./);
  expect(await app.page.locator('.times').count()).toBe(0);
  expect(await app.page.locator('.bench-words').innerText()).not.toMatch(WAITS);
  await walk.see('D4-tray');
  await walk.slab();
  expect(await walk.headline()).toBe('Note how it turned out');
  expect((await walk.acts()).slice(-4)).toEqual(['edge', '3 answers', 'bulkOver', 'trayBaked']);
  expectNoFaults(app.faults);
  await app.close();
});

it('bakes cold loaves that have gone over now, from cold, or flat, and has them wait for nothing', async () => {
  const walk = await DoughWalk.begin('24', 'My loaves are in the fridge');
  const { app, baker } = walk;
  await walk.untilCalled(15 * 60);
  await walk.slab();
  await walk.tile('Above');
  await walk.slab();
  await walk.slab();
  await walk.tile('Stays');
  expect(await walk.detail()).toBe(
    'Over the rim: bake now, from cold, with a shallow cut. Far gone: bake them flat.',
  );
  expect(await walk.slabSays()).toBe('Gone over bake from cold, now');
  expect(await walk.tiles()).toEqual(['Bake them flat', 'They’re ready']);
  await walk.see('D5-loaves-over');

  await walk.tile('Bake them flat');
  await baker.openGate();
  expect(await walk.headline()).toBe('Bake it flat in a tray');
  await walk.takeBack();
  await walk.slab();
  expect(await walk.headline()).toMatch(/^Heat the oven|^A grown/);
  expect(await app.page.locator('.bench-words').innerText()).not.toMatch(WAITS);
  await walk.see('D6-oven-now');
  expect((await walk.acts()).slice(-2)).toEqual(['5 answers', 'loafOver']);
  expectNoFaults(app.faults);
  await app.close();
});
