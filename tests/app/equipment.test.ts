import { createRoot } from 'solid-js';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openHouse } from '../../src/app/open-house.ts';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import type { House } from '../../src/screens/house.ts';
import { serveFormulas } from '../fakes/baking.ts';
import { loadedLater } from '../fakes/loaded-later.ts';
import { makeMemorySettings } from '../fakes/memory-settings.ts';
import { makeFakeWorld, type FakeWorld } from '../fakes/world.ts';

beforeEach(() => serveFormulas());
afterEach(() => vi.unstubAllGlobals());
afterAll(async () => {
  await loadedLater();
});

const open = (world: FakeWorld): Promise<House> => createRoot(() => openHouse(world));
const kept = (world: FakeWorld) =>
  makeMemorySettings(
    Object.fromEntries((world.settings as ReturnType<typeof makeMemorySettings>).values),
  );

describe('what the kitchen holds', () => {
  it('is kept on the tablet, one change after the other', async () => {
    const world = makeFakeWorld();
    const house = await open(world);
    expect(house.equipment()).toEqual(EQUIPMENT);
    house.equip({ tins: 4 });
    house.equip({ scale: 5 });
    expect(house.equipment()).toEqual({ ...EQUIPMENT, tins: 4, scale: 5 });
    const again = await open({ ...makeFakeWorld(), settings: kept(world) });
    expect(again.equipment()).toMatchObject({ tins: 4, scale: 5 });
  });

  it('is left as it is where it cannot be read, and the baker is told where', async () => {
    const settings = makeMemorySettings({ equipment: { tins: 'many' } });
    const house = await open({ ...makeFakeWorld(), settings });
    expect(house.equipment()).toEqual(EQUIPMENT);
    const texts = () => house.told().map((told) => told.text);
    await vi.waitFor(() =>
      expect(texts().join(' ')).toContain(
        'at tins: a whole number 1 to 12 was wanted, "many" came',
      ),
    );
    expect(settings.values.get('equipment')).toEqual({ tins: 'many' });
  });

  it('holds for this page where no setting can be written', async () => {
    const settings = makeMemorySettings();
    settings.fail('closed');
    const house = await open({ ...makeFakeWorld(), settings });
    house.equip({ tins: 4 });
    expect(house.equipment().tins).toBe(4);
  });

  it('is not written from a rehearsal', async () => {
    const settings = makeMemorySettings();
    const world = makeFakeWorld();
    const house = await open({ ...world, settings, clock: { ...world.clock, rate: 60 } });
    house.equip({ tins: 4 });
    expect(house.equipment().tins).toBe(4);
    expect(settings.values.has('equipment')).toBe(false);
  });

  it('sounds a call as it really sounds, and stops', async () => {
    const world = makeFakeWorld();
    const house = await open(world);
    const stop = house.tryCall('hot', 3000);
    expect(world.sound.ringing()).toMatchObject([{ kind: 'hot', inMs: 3000 }]);
    stop();
    expect(world.sound.ringing()).toEqual([]);
  });
});
