import { createRoot } from 'solid-js';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { deadlineOf } from '../../machines/kitchen/dues.ts';
import { MACHINES } from '../../machines/kitchen/kitchen.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import { makeKitchenTime } from '../../src/app/kitchen-time.ts';
import { openHouse } from '../../src/app/open-house.ts';
import { HOUR, MINUTE } from '../../src/core/units.ts';
import type { House } from '../../src/screens/house.ts';
import { makeTurnedClock } from '../fakes/turned-clock.ts';
import { openBaking, serveFormulas } from '../fakes/baking.ts';
import { loadedLater } from '../fakes/loaded-later.ts';
import { makeFakeWorld } from '../fakes/world.ts';

beforeEach(() => {
  serveFormulas();
});
afterEach(() => vi.unstubAllGlobals());
afterAll(async () => {
  await loadedLater();
});

const place = (house: House, id: string) => {
  const bake = house.kitchen().bakes[id]!;
  return { stage: stageOf(bake), left: (deadlineOf(bake) ?? NaN) - house.now() };
};

/** A dough in its bowl, its temperature taken; an hour of its wait is over. */
const anHourIn = async () => {
  const world = makeFakeWorld();
  const { house, begin } = await openBaking(world);
  const id = await begin('bulk.proving');
  await house.take({
    kind: 'reading',
    by: 'hand',
    bake: id,
    reading: { what: 'doughTemperature', celsius: 24 },
  });
  const pass = (ms: number) => {
    world.clock.turn(ms);
    world.beat();
  };
  /** The wall is set; the page runs on. */
  const leap = (ms: number) => {
    world.clock.set(world.clock.now() + ms);
    world.beat();
    pass(1000);
  };
  pass(HOUR);
  house.readBack();
  return { world, house, begin, id, pass, leap, before: place(house, id) };
};

describe.each([20 * MINUTE, HOUR, 12 * HOUR])('a clock that goes back %i ms', (by) => {
  it('while the page runs moves no wait, and is told', async () => {
    const { house, id, leap, before } = await anHourIn();
    leap(-by);
    expect(place(house, id)).toEqual({ ...before, left: before.left - 1000 });
    expect(house.leaps().back).toMatchObject({ by: -by });
    house.leapRead('back');
    expect(house.leaps()).toEqual({ back: null, ahead: null });
  });

  it('is kept across a reload, though nothing was pressed since', async () => {
    const { world, house, id, leap, before } = await anHourIn();
    leap(-by);
    world.clock.turn(MINUTE);
    const again = await createRoot(() => openHouse(world));
    expect(place(again, id)).toEqual({ ...before, left: before.left - 1000 - MINUTE });
    expect(replay(house.records(), MACHINES).trouble).toBeNull();
  });
});

describe('a clock that goes ahead', () => {
  it('in sight is asked about; set, every wait is that much longer', async () => {
    const { world, house, id, leap, pass, before } = await anHourIn();
    leap(11 * HOUR);
    expect(place(house, id).stage).toBe('bulk.look');
    expect(house.leaps().ahead).toMatchObject({ by: 11 * HOUR, inSight: true });
    expect(house.away()).toBeNull();
    house.hush();
    await vi.waitFor(() => expect(house.records().at(-1)!.fact.kind).toBe('heard'));
    pass(10 * MINUTE);
    await house.clockWasWrong();
    world.beat();
    expect(place(house, id)).toEqual({ ...before, left: before.left - 1000 - 10 * MINUTE });
    expect(house.leaps().ahead).toBeNull();
    expect(house.ringing()).toBeNull();
    expect(replay(house.records(), MACHINES).trouble).toBeNull();
  });

  it('leaves an absence before it to be read', async () => {
    const { world, house, leap, pass } = await anHourIn();
    world.glance();
    pass(2 * HOUR);
    const absence = house.away();
    expect(absence).not.toBeNull();
    leap(HOUR);
    expect(house.leaps().ahead?.inSight).toBe(true);
    expect(house.away()?.from).toBe(absence!.from);
  });

  it('keeps what was done since: only what was before it is moved', async () => {
    const { world, house, id, leap, before } = await anHourIn();
    const timer = { kind: 'timer', timer: 'one', name: 'tea', call: 'act' } as const;
    leap(2 * HOUR);
    const until = house.now() + 10 * MINUTE;
    await house.take({ ...timer, until });
    await house.clockWasWrong();
    world.beat();
    expect(place(house, id)).toEqual({ ...before, left: before.left - 1000 });
    expect(house.kitchen().timers['one']!.until).toBe(until);
  });

  it('in two goes is asked about as one, and each moves what was before it', async () => {
    const { world, house, id, leap, before } = await anHourIn();
    leap(11 * HOUR);
    expect(place(house, id).stage).toBe('bulk.look');
    const timer = { kind: 'timer', timer: 'one', name: 'other', call: 'act' } as const;
    await house.take({ ...timer, until: house.now() + 2 * HOUR });
    leap(20 * MINUTE);
    expect(house.leaps().ahead).toMatchObject({ by: 11 * HOUR + 20 * MINUTE, inSight: true });
    await house.clockWasWrong();
    world.beat();
    expect(place(house, id)).toEqual({ ...before, left: before.left - 2000 });
    expect(house.kitchen().timers['one']!.until - house.now()).toBe(2 * HOUR - 1000);
    expect(house.leaps().ahead).toBeNull();
    expect(replay(house.records(), MACHINES).trouble).toBeNull();
    // What was answered is over: a later leap is asked about by itself.
    leap(HOUR);
    expect(house.leaps().ahead?.by).toBe(HOUR);
  });

  it('has wait again what time alone led on, though something else was done since', async () => {
    const { world, house, begin, id, leap, before } = await anHourIn();
    const other = await begin('mix.first');
    leap(11 * HOUR);
    expect(place(house, id).stage).toBe('bulk.look');
    await house.take({ kind: 'press', who: other, act: 'mixed' });
    const rest = place(house, other);
    await house.clockWasWrong();
    world.beat();
    expect(place(house, id)).toEqual({ ...before, left: before.left - 1000 });
    expect(place(house, other)).toEqual(rest);
    expect(house.ringing()).toBeNull();
    expect(house.kitchen().attention.context.calls).toEqual([]);
    expect(replay(house.records(), MACHINES).trouble).toBeNull();
  });

  it('leaves alone what hands led on since, and time after them', async () => {
    const { world, house, id, leap } = await anHourIn();
    leap(11 * HOUR);
    for (const act of ['bulkReady', 'divided', 'preshaped'] as const)
      await house.take({ kind: 'press', who: id, act });
    world.clock.turn(HOUR);
    world.beat();
    const stands = place(house, id).stage;
    expect(stands).toBe('shape.finalShape');
    await house.clockWasWrong();
    world.beat();
    expect(place(house, id).stage).toBe(stands);
  });

  it('as the tablet slept counts as time, and is not asked about', async () => {
    const { world, house, id, pass, before } = await anHourIn();
    world.glance();
    world.clock.sleep(2 * HOUR);
    world.beat();
    pass(1000);
    expect(place(house, id)).toEqual({ ...before, left: before.left - 2 * HOUR - 1000 });
    expect(house.leaps().ahead).toMatchObject({ by: 2 * HOUR, inSight: false });
    expect(house.away()).not.toBeNull();
    house.leapRead('ahead');
    expect(house.leaps().ahead).toBeNull();
  });

  it('is no question where the page hears a beat late that it was hidden', async () => {
    const { world, house, pass } = await anHourIn();
    world.clock.sleep(2 * HOUR);
    world.beat();
    world.glance();
    pass(1000);
    expect(house.leaps().ahead).toMatchObject({ inSight: false });
  });
});

it('takes no drift between the clocks for a leap, nor a net that sets one right', () => {
  const clock = makeTurnedClock(Date.UTC(2031, 4, 3, 6));
  const time = makeKitchenTime(clock, null);
  for (const by of [40, -30, 900, -2_000, -4_900]) {
    clock.turn(MINUTE);
    clock.set(clock.now() + by);
    time.read(0);
  }
  expect(time.leapt()).toBeNull();
});

it.each([
  [3_000, false],
  [6_000, true],
])('a clock %i ms behind the last fact is told as one that went back: %s', async (by, told) => {
  const { world, house } = await anHourIn();
  const timer = { kind: 'timer', timer: 'one', name: 'other', call: 'act' } as const;
  await house.take({ ...timer, until: house.now() + HOUR });
  const opened = makeKitchenTime(world.clock, { at: house.now(), raw: world.clock.now() + by });
  opened.read(house.now());
  expect(opened.fellBack()).toBe(told);
  // While the page runs it is told how far it went, or nothing at all.
  world.clock.set(world.clock.now() - by);
  world.beat();
  await vi.waitFor(() => expect(house.told()).toEqual([]));
  expect(house.now()).toBe(house.records().at(-1)!.fact.at);
});
