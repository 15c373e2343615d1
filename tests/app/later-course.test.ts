import { createRoot } from 'solid-js';
import { expect, it } from 'vitest';
import { course } from '../../src/app/course.ts';
import { makeCourse } from '../../src/app/later-course.ts';
import { openHouse } from '../../src/app/open-house.ts';
import { MINUTE } from '../../src/core/units.ts';
import { makeFakeWorld } from '../fakes/world.ts';

it('is here at once where the log has a row, else with the first fact', async () => {
  expect((await makeCourse(true)).here()).toBe(course);
  const later = await makeCourse(false);
  expect(later.here()).toBeNull();
  expect(await later.fetch()).toBe(course);
  expect(later.here()).toBe(course);
});

it('rings for a timer that was the first thing in an empty kitchen, and after a reload at once', async () => {
  const world = makeFakeWorld();
  const house = await createRoot(() => openHouse(world));
  const until = house.now() + 5 * MINUTE;
  await house.take({ kind: 'timer', timer: 't', name: 'kettle', until, call: 'act' });
  expect(house.ringing()).toBeNull();
  world.clock.turn(5 * MINUTE);
  world.beat();
  expect(house.ringing()?.stage).toBe('t');
  expect(world.sound.ringing()).toMatchObject([{ kind: 'act' }]);
  const again = makeFakeWorld({ store: world.store, at: world.clock.now() });
  const reopened = await createRoot(() => openHouse(again));
  expect(reopened.ringing()?.stage).toBe('t');
  expect(again.sound.ringing()).toMatchObject([{ kind: 'act' }]);
});
