import { createRoot } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { deadlineOf } from '../../machines/kitchen/dues.ts';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import { openHouse } from '../../src/app/open-house.ts';
import { MINUTE } from '../../src/core/units.ts';
import type { House } from '../../src/screens/house.ts';
import { serveFormulas } from '../fakes/baking.ts';
import { makeFakeWorld } from '../fakes/world.ts';

beforeEach(() => serveFormulas());
afterEach(() => vi.unstubAllGlobals());

/** A dough that rises, on a tablet whose frames come when they are told to. */
const rising = async () => {
  const world = makeFakeWorld({ painting: 'when told' });
  const told = vi.spyOn(world.news, 'tell');
  const house: House = await createRoot(() => openHouse(world));
  await vi.waitFor(() => expect(house.formulas()).toHaveLength(9), { timeout: 20_000 });
  const formula = house.formulas()[0]!.formula!;
  const bake = (await house.begin({
    formula,
    loaves: 2,
    kitchen: 22,
    from: 'bulk.proving' as never,
  }))!;
  world.paint();
  told.mockClear();
  const deadline = () => deadlineOf(house.kitchen().bakes[bake]!)!;
  const stage = () => stageOf(house.kitchen().bakes[bake]!);
  const read = (reading: object) =>
    house.take({ kind: 'reading', by: 'hand', bake, reading } as never);
  const warm = () => read({ what: 'doughTemperature', celsius: 28.5 });
  return { world, house, deadline, stage, read, warm, told };
};

describe('what a press brought', () => {
  it('is shown first; alarm, call and other pages follow with the frame', async () => {
    const { world, deadline, warm, told } = await rising();
    const before = deadline();
    const laid = world.sound.ringing();
    await warm();
    expect(deadline()).toBeLessThan(before);
    expect(world.clock.pending()).not.toContain(deadline());
    expect(world.sound.ringing()).toEqual(laid);
    expect(told).not.toHaveBeenCalled();
    world.paint();
    expect(told).toHaveBeenCalledTimes(1);
    expect(Math.min(...world.clock.pending())).toBeLessThanOrEqual(deadline());
    expect(world.sound.ringing()).not.toEqual(laid);
  });

  it('that is due in the same instant rings, whether a frame comes or not', async () => {
    const { world, house, stage, read } = await rising();
    world.clock.turn(60 * MINUTE);
    expect(stage()).toBe('bulk.proving');
    // Doubled in an hour: it is to be looked at now.
    await read({ what: 'rise', of: 'dough', percent: 100 });
    expect(stage()).toBe('bulk.look');
    expect(house.ringing()).toMatchObject({ stage: 'bulk.look' });
    expect(world.sound.ringing()).toMatchObject([{ kind: 'look', inMs: 0 }]);
  });

  it('loses no alarm to a second press before the frame', async () => {
    const { world, house, deadline, stage, warm, read } = await rising();
    await warm();
    await read({ what: 'doughTemperature', celsius: 27 });
    world.paint();
    const at = deadline();
    world.clock.turn(at - world.clock.now());
    expect(stage()).toBe('bulk.look');
    expect(house.ringing()).not.toBeNull();
  });

  it('puts off nothing that time brings meanwhile', async () => {
    const { world, deadline, stage, warm } = await rising();
    await warm();
    // No frame has come, and the old alarm is long: the beat that runs anyway finds what is due.
    world.clock.turn(deadline() - world.clock.now());
    world.beat();
    expect(stage()).toBe('bulk.look');
    expect(world.sound.ringing()).toMatchObject([{ kind: 'look' }]);
  });
});
