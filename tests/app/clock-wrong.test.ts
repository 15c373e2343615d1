import { afterAll, afterEach, beforeEach, expect, it, vi } from 'vitest';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import { deadlineOf } from '../../machines/kitchen/dues.ts';
import { MACHINES } from '../../machines/kitchen/kitchen.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import { clockWasWrong } from '../../src/app/clock-wrong.ts';
import { HOUR, MINUTE } from '../../src/core/units.ts';
import type { House } from '../../src/screens/house.ts';
import { openBaking, serveFormulas } from '../fakes/baking.ts';
import { loadedLater } from '../fakes/loaded-later.ts';
import { makeFakeWorld } from '../fakes/world.ts';

const YEAR = 365 * 24 * HOUR;

beforeEach(() => {
  serveFormulas();
});
afterEach(() => vi.unstubAllGlobals());
afterAll(async () => {
  await loadedLater();
});

const place = (house: House, id: string) => {
  const bake = house.kitchen().bakes[id]!;
  return { stage: stageOf(bake), deadline: deadlineOf(bake) };
};

it('lets a dough go on that only a clock set a year forward made old', async () => {
  const world = makeFakeWorld();
  const { house, begin } = await openBaking(world);
  const id = await begin('bulk.proving');
  const began = house.now();
  await house.take({
    kind: 'reading',
    by: 'hand',
    bake: id,
    reading: { what: 'doughTemperature', celsius: 24 },
  });
  const before = place(house, id);
  const left = before.deadline! - began;

  world.clock.turn(YEAR);
  world.beat();
  expect(place(house, id).stage).toBe('bulk.look');
  house.hush();
  await vi.waitFor(() => expect(house.records().at(-1)!.fact.kind).toBe('heard'));
  await house.clockWasWrong();
  const after = place(house, id);
  expect(after.stage).toBe('bulk.proving');
  expect(after.deadline! - house.now()).toBe(left);
  expect(house.ringing()).toBeNull();

  // Set right again, the hours on the screen are the wall's; the wait goes on.
  world.clock.turn(-YEAR);
  world.beat();
  world.clock.turn(left - MINUTE);
  world.beat();
  expect(place(house, id).stage).toBe('bulk.proving');
  world.clock.turn(MINUTE);
  world.beat();
  expect(place(house, id).stage).toBe('bulk.look');
  expect(replay(house.records(), MACHINES).trouble).toBeNull();
}, 30_000);

it('does nothing where nothing was done yet', () => {
  expect(clockWasWrong([], 5)).toBeNull();
});
