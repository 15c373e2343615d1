import { createRoot } from 'solid-js';
import { describe, expect, it } from 'vitest';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import { openHouse } from '../../src/app/open-house.ts';
import type { LaidAsk } from '../../src/core/day/laid/lay-ask.ts';
import { DAY } from '../../src/core/units.ts';
import { askWorldOf } from '../../src/screens/ask-world.ts';
import type { House } from '../../src/screens/house.ts';
import { askedBake, dayAsk, laidDay, SATURDAY_NOON, THURSDAY } from '../fakes/laid-day.ts';
import { makeFakeWorld, type FakeWorld } from '../fakes/world.ts';

const open = (world: FakeWorld): Promise<House> => createRoot(() => openHouse(world));
const PLAN = laidDay();
const NAME = 'Cherry and hazelnut';
const begun = (house: House): string | null => house.plan()!.ask.bakes[0]!.bake;

describe('a day in the house', () => {
  it('keeps an accepted plan, opens again with it, and takes it back', async () => {
    const world = makeFakeWorld({ at: THURSDAY });
    const house = await open(world);
    expect(house.plan()).toBeNull();
    await house.take({ kind: 'plan', plan: PLAN });
    expect(house.plan()).toEqual(PLAN);
    const again = await open(makeFakeWorld({ store: world.store, at: THURSDAY }));
    expect(again.plan()).toEqual(PLAN);
    expect(again.told()).toEqual([]);
    await again.takeBack();
    expect(again.plan()).toBeNull();
  });

  it('gives a plan up, and lets it go half a day after its bread', async () => {
    const world = makeFakeWorld({ at: THURSDAY });
    const house = await open(world);
    await house.take({ kind: 'plan', plan: PLAN });
    await house.take({ kind: 'planOff', plan: 'another' });
    expect(house.plan()).toEqual(PLAN);
    await house.take({ kind: 'planOff', plan: PLAN.id });
    expect(house.plan()).toBeNull();
    await house.takeBack();
    expect(house.plan()).toEqual(PLAN);
    world.clock.turn(SATURDAY_NOON + DAY - THURSDAY);
    world.beat();
    expect(house.plan()).toBeNull();
  });

  it('begins a planned bake in one press, fed as it was planned; taken back, it waits again', async () => {
    const house = await open(makeFakeWorld({ at: THURSDAY }));
    await house.take({ kind: 'plan', plan: PLAN });
    expect(await house.beginPlanned('no such bread')).toBeNull();
    const id = await house.beginPlanned(NAME);
    expect(stageOf(house.kitchen().bakes[id!]!)).toBe('read.list');
    expect([begun(house), house.records()]).toMatchObject([id, { length: 2 }]);
    const feed = PLAN.touches.find(({ name }) => name === 'feed levain');
    expect(feed?.choice).toBe('1:5:5');
    const { lines } = house.kitchen().bakes[id!]!.context.recipe;
    const [seed, flour, water] = lines.feed.map(({ grams }) => grams);
    expect([seed, flour, water]).toEqual([18, 91, 91]);
    expect(await house.beginPlanned(NAME)).toBeNull();
    await house.takeBack();
    expect([begun(house), id! in house.kitchen().bakes]).toEqual([null, false]);
    expect(await house.beginPlanned(NAME)).not.toBeNull();
  });

  it('hands a question to the planner with what it depends on', async () => {
    const house = await open(makeFakeWorld({ at: THURSDAY }));
    const world = askWorldOf(house);
    expect(world).toMatchObject({ now: THURSDAY, ahead: 0, zone: 'Europe/Berlin' });
    expect(world.week.map(({ name }) => name)).toEqual(['asleep']);
    const planner = await house.planner();
    const told: LaidAsk[] = [];
    const ask = dayAsk({ bakes: [askedBake()] });
    planner.layAsk(ask, world, (laid) => told.push(laid));
    expect(told).toMatchObject([
      { result: { fits: true, ready: [{ at: SATURDAY_NOON }] }, isLast: true },
    ]);
    expect(await house.planner()).toBe(planner);
  });

  it('moves the plan with the waits where the clock had leapt ahead by days', async () => {
    const world = makeFakeWorld({ at: THURSDAY });
    const house = await open(world);
    await house.take({ kind: 'plan', plan: PLAN });
    const id = await house.beginPlanned(NAME);
    world.clock.turn(3 * DAY);
    world.beat();
    await house.clockWasWrong();
    const moved = house.plan()!;
    expect(moved).toMatchObject({ id: PLAN.id, sequence: 2 });
    expect(begun(house)).toBe(id);
    expect(moved.touches.map(({ at }) => at)).toEqual(PLAN.touches.map(({ at }) => at + 3 * DAY));
    expect(moved.ask.bakes[0]!.due).toBe(SATURDAY_NOON + 3 * DAY);
    expect(moved.ready).toEqual([{ batch: NAME, at: SATURDAY_NOON + 3 * DAY }]);
    // Set right again, the wall shows the hours that were planned.
    world.clock.turn(-3 * DAY);
    world.beat();
    expect(house.wall(moved.ready[0]!.at)).toBe(SATURDAY_NOON);
  });
});
