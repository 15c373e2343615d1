import { expect, it } from 'vitest';
import { sayTime } from '../../../src/core/speech/times.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { DoughWalk, hour } from '../harness/dough-walk.ts';
import { expectNoFaults } from '../harness/faults.ts';

const TIGHT = 'It is still tight: give it time or warmth. You may go on all the same.';

/** Answers an ask for the rise by its picture; the ask is done with. */
const risen = async (walk: DoughWalk, label: string): Promise<void> => {
  await walk.baker.tap('.slab');
  await walk.baker.noted(() => walk.baker.press(label));
  await walk.app.turn(700);
  expect(await walk.headline()).toBe('Leave the dough to rise');
};

it('tells a cold dough with a flat edge its hours, a warm place and the next look, and never that it is ready', async () => {
  const walk = await DoughWalk.begin('18', 'My dough is in the bowl');
  const { app } = walk;
  const planned = await walk.marks();
  await walk.see('B1-joined');

  // Every ask is answered low; none comes back for it.
  let called = await walk.untilCalled(9 * 60);
  while (called === 'See how far it has risen') {
    await risen(walk, 'Not at all');
    called = await walk.untilCalled(12 * 60);
  }
  expect(called).toBe('How far has it risen?');
  expect(await walk.now()).toBeGreaterThan(planned['look']!);
  await walk.said();
  await walk.tile('By a quarter');
  await walk.tile('Flat');
  await walk.tile('None');
  await walk.tile('Firm');
  await walk.slab();
  expect(await walk.detail()).toBe(TIGHT);
  expect(await walk.said()).toContain(TIGHT);
  expect(await walk.slabSays()).toBe('Not yet look again later');
  await walk.see('B2-tight');

  await walk.slab();
  const marks = await walk.marks();
  const now = await walk.now();
  expect(await walk.headline()).toBe('Leave the dough to rise');
  // Hours, as the fact carries them: a window, not a minute, and none of it past.
  expect(await walk.windowHours()).toEqual(
    ['earliest', 'likely', 'latest'].map((mark) => hour(marks[mark]!)),
  );
  expect(await walk.windowInSight()).toEqual(['wide', 'small', 'tall']);
  expect(marks['earliest']).toBeGreaterThan(now);
  expect(marks['latest']! - marks['earliest']!).toBeGreaterThan(60 * MINUTE);
  // A warm place, and what it saves; and when to look again.
  const [look, warmed] = [hour(marks['look']!), hour(marks['warmed']!)];
  expect(await walk.detail()).toBe(`In a warm place, 26 °C: ready about ${warmed}.`);
  expect(marks['likely']! - marks['warmed']!).toBeGreaterThanOrEqual(45 * MINUTE);
  expect(await walk.times()).toContain(`to the next look at ${look}`);
  expect(marks['look']! - now).toBeLessThanOrEqual(60 * MINUTE);
  const said = await walk.said();
  expect(said).toContain(`${sayTime(look)} is the next look.`);
  expect(said).toContain(`In a warm place, twenty-six degrees: ready about ${sayTime(warmed)}.`);
  await walk.see('B3-hours');

  // Hands beat the model: going on is one press at the verdict, and it is remembered.
  await walk.takeBack();
  expect(await walk.detail()).toBe(TIGHT);
  await walk.tile('It’s ready');
  expect(await walk.headline()).toBe('Divide into 900 g pieces');
  expect((await walk.acts()).slice(-2)).toEqual(['5 answers', 'bulkReady']);
  await walk.takeBack();
  await walk.slab();
  expect(await walk.untilCalled(80)).toBe('How far has it risen?');
  expect((await walk.acts()).slice(-2)).toEqual(['5 answers', 'bulkNotYet']);
  expectNoFaults(app.faults);
  await app.close();
});
