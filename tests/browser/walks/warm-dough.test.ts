import { expect, it } from 'vitest';
import { MINUTE } from '../../../src/core/units.ts';
import { DoughWalk, hour } from '../harness/dough-walk.ts';
import { expectNoFaults } from '../harness/faults.ts';

const NOW = 'Ready, and it goes on in the fridge: divide it about now.';

/** From the scale to the long wait after the last fold, the dough keyed in at 27 °C. */
const toTheLongWait = async (walk: DoughWalk): Promise<void> => {
  const { baker } = walk;
  for (let line = 0; line < 5; line++) await baker.slab();
  await baker.wait(30);
  for (let line = 0; line < 3; line++) await baker.slab();
  await baker.tap('.slab');
  await baker.key('27');
  await baker.slab();
  for (let fold = 0; fold < 3; fold++) {
    await baker.wait(30);
    await baker.slab();
  }
};

it('tells a warm dough that is ahead of its plan to be divided about now, for it goes on in the fridge', async () => {
  const walk = await DoughWalk.begin('26', 'Weighing comes next');
  const { app, baker } = walk;
  await toTheLongWait(walk);
  expect(await walk.headline()).toBe('Leave the dough to rise');
  const planned = await walk.marks();
  expect(await walk.detail()).toBe(`Next look at ${hour(planned['look']!)}. Keep it covered.`);
  expect(await walk.windowHours()).toEqual(
    ['earliest', 'likely', 'latest'].map((mark) => hour(planned[mark]!)),
  );

  // Long before that look its rise is ahead: the hours come nearer, by as much as is said.
  await app.turn(20 * MINUTE);
  await walk.backAgain();
  await walk.said();
  await walk.read('Dough rise, by eye', 'By three quarters');
  const nearer = await walk.marks();
  const sooner = Math.round((planned['likely']! - nearer['likely']!) / MINUTE / 5) * 5;
  expect(sooner).toBeGreaterThanOrEqual(20);
  expect(await walk.said()).toMatch(/^Further than expected\. About .+ sooner, look at /);
  expect(await walk.detail()).toContain(hour(nearer['look']!));
  await walk.see('A1-ahead');

  // Domed and full of bubbles as well: no more waiting for any hour.
  await walk.read('Edge and bubbles', 'Domed', 'Many');
  await app.page.locator('.call').waitFor();
  expect(await walk.now()).toBeLessThan(planned['look']! - 20 * MINUTE);
  await walk.see('A2-called');
  await baker.hush();
  expect(await walk.said()).toContain('Come and look: the dough.');
  // What was just said is not asked again.
  expect(await walk.headline()).toBe('How does it move when nudged?');
  await walk.slab();
  await walk.slab();
  expect([await walk.headline(), await walk.detail()]).toEqual(['Choose for the dough', NOW]);
  expect(await walk.slabSays()).toBe('It’s ready then shape it');
  expect(await walk.tiles()).toEqual(['Not yet', 'Gone over']);
  expect(await walk.said()).toContain(NOW);
  await walk.see('A3-divide-now');

  // Hands beat the model. Later is one press, and the next look is within the hour.
  await walk.tile('Not yet');
  const later = await walk.marks();
  const rest = later['look']! - (await walk.now());
  expect(rest).toBeGreaterThan(19 * MINUTE);
  expect(rest).toBeLessThanOrEqual(60 * MINUTE);
  expect(await walk.detail()).toContain(`Next look at ${hour(later['look']!)}.`);
  await walk.see('A4-not-yet');
  // Sooner is one press at the look, whatever of it was answered.
  await walk.slab();
  await walk.control('It’s ready');
  expect(await walk.headline()).toBe('Divide into 900 g pieces');
  await walk.takeBack();
  await walk.takeBack();
  await walk.takeBack();
  expect(await walk.detail()).toBe(NOW);
  await walk.slab();
  expect(await walk.headline()).toBe('Divide into 900 g pieces');
  await walk.see('A5-divide');
  expect((await walk.acts()).slice(-4)).toEqual(['rise', 'edge', '2 answers', 'bulkReady']);
  expectNoFaults(app.faults);
  await app.close();
});
