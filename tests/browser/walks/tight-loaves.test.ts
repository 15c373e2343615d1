import { expect, it } from 'vitest';
import { MINUTE } from '../../../src/core/units.ts';
import { DoughWalk, hour } from '../harness/dough-walk.ts';
import { expectNoFaults } from '../harness/faults.ts';

it('tells loaves that have not grown in the cold how long they stand out, and holds them to it', async () => {
  const walk = await DoughWalk.begin('21', 'My loaves are in the fridge');
  const { app } = walk;
  await walk.see('C1-fridge');
  expect(await walk.untilCalled(15 * 60)).toBe('How much has it grown?');
  await walk.said();
  await walk.tile('Not at all');
  expect(await walk.detail()).toBe('The rim of its basket or tin.');
  await walk.tile('Below');
  await walk.tile('Firm');
  await walk.slab();
  await walk.tile('Springs back');
  const told = /Leave them out (\d)\sh(?:\s(\d\d))?, then look\. You may go on\.$/;
  const [, hours = '', minutes = '0'] = told.exec(await walk.detail()) ?? [];
  const stands = Number(hours) * 60 + Number(minutes);
  expect(await walk.said()).toMatch(/Leave them out (one|two) hours?.*, then look/);
  expect(await walk.slabSays()).toMatch(/^Leave them out \d\sh(\s\d\d)?, then look$/);
  await walk.see('C2-stand-out');

  // Hands beat the model: into the oven, or back into the cold, is one press each.
  await walk.tile('They’re ready');
  expect(await walk.headline()).toMatch(/^Heat the oven|^A grown/);
  expect((await walk.acts()).at(-1)).toBe('loafReady');
  await walk.takeBack();
  await walk.tile('Not yet');
  expect(await walk.headline()).toBe('Leave the loaves in the fridge');
  expect((await walk.acts()).at(-1)).toBe('loafNotYet');
  await walk.takeBack();
  await walk.said();

  const before = await walk.now();
  await walk.slab();
  const { look } = await walk.marks();
  expect(Math.abs((look! - before) / MINUTE - stands)).toBeLessThanOrEqual(5);
  expect(await walk.headline()).toBe('Leave the loaves out');
  expect(await walk.times()).toContain(`until you are needed at ${hour(look!)}`);
  expect(await walk.detail()).toBe(`You are needed at ${hour(look!)}. Keep them covered.`);
  expect(await walk.said()).toMatch(/^(one|two) hours?.* on the counter\. You are needed at /);
  await walk.see('C3-standing');

  expect(await walk.untilCalled(stands + 20)).toBe('What does a dent do?');
  await walk.see('C4-look-again');
  await walk.tile('Springs back');
  await walk.tile('A little');
  expect(await walk.detail()).toMatch(
    /^Not there yet: leave it out (\d+\smin|1\sh), then look\. You may go on\.$/,
  );
  await walk.slab();
  expect(await walk.headline()).toBe('Leave the loaves out');
  await walk.see('C5-stands-on');
  // Sooner than the next call: the oven is asked for while they still stand.
  await walk.slab();
  await walk.slab();
  await walk.slab();
  expect(await walk.detail()).toMatch(/ready\. You may go on\.$/);
  await walk.slab();
  expect((await walk.acts()).slice(-6)).toEqual([
    'standOut',
    '2 answers',
    'loafNotYet',
    'loafSeen',
    '2 answers',
    'loafReady',
  ]);
  expectNoFaults(app.faults);
  await app.close();
});
