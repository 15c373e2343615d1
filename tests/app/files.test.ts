import { createRoot } from 'solid-js';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { MACHINE_VERSION } from '../../machines/kitchen/kitchen.ts';
import { openHouse } from '../../src/app/open-house.ts';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { goesOn, readLogFile } from '../../src/core/records/read-log-file.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
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
const started = async (world: FakeWorld): Promise<House> => {
  const house = await open(world);
  await vi.waitFor(() => expect(house.formulas().length).toBeGreaterThan(0));
  const { formula } = house.formulas()[0]!;
  await house.begin({ formula: formula!, loaves: 2, kitchen: 22, from: 'bulk.proving' });
  return house;
};
/** As backup.ts writes it. */
const text = (house: House): string =>
  [{ kitchenFile: 1, equipment: house.equipment() }, ...house.records()]
    .map((line) => `${JSON.stringify(line)}\n`)
    .join('');

describe('a saved log', () => {
  it('gives an empty kitchen the same log, place and equipment, but not how it is heard there', async () => {
    const house = await started(makeFakeWorld());
    house.equip({ scale: 5, tins: 3, sound: { at: house.now(), heard: 'yes' }, readsOwn: true });
    const reload = vi.fn();
    const settings = makeMemorySettings();
    const other = { ...makeFakeWorld({ at: house.now() }), settings, reload };
    const empty = await open(other);
    const { file, why } = await empty.readFile(text(house));
    expect(why).toBeNull();
    expect(file).toMatchObject({ bakes: 1, last: house.records().at(-1)!.fact.at });
    await empty.takeFile(file!);
    expect(reload).toHaveBeenCalledOnce();
    const again = await open({
      ...makeFakeWorld({ store: other.store, at: house.now() }),
      settings,
    });
    expect(again.records()).toEqual(house.records());
    expect(Object.keys(again.kitchen().bakes)).toEqual(Object.keys(house.kitchen().bakes));
    expect(again.equipment()).toMatchObject({ scale: 5, tins: 3, sound: null, readsOwn: false });
  });

  it('goes on from the same log, and leaves another kitchen’s alone', async () => {
    const house = await started(makeFakeWorld());
    const whole = text(house);
    expect((await house.readFile(whole)).why).toBeNull();
    const world = makeFakeWorld();
    const other = await started({
      ...world,
      ids: { device: 'harbour', next: () => `h${Math.random()}` },
    });
    const before = other.records();
    expect((await other.readFile(whole)).why).toContain('has a log of its own');
    expect(other.records()).toEqual(before);
    // A file that lacks what was done since is another log too: taking it would lose a fact.
    expect(goesOn(house.records(), house.records().slice(0, -1))).toBe(false);
  });

  it('is refused whole, by line and name, where any of it cannot be read', async () => {
    const house = await started(makeFakeWorld());
    const rows = house.records();
    const read = (lines: readonly unknown[]) =>
      readLogFile(lines.map((line) => JSON.stringify(line)).join('\n'), MACHINE_VERSION);
    const head = { kitchenFile: 1, equipment: EQUIPMENT };
    const [first] = rows as [LogRecord];
    expect(read([head, ...rows]).records).toHaveLength(rows.length);
    expect(read(rows).records).toHaveLength(rows.length);
    expect(read([head]).records).toEqual([]);
    expect(read([{ ...head, kitchenFile: 2 }, ...rows]).reason).toMatchObject({
      line: 1,
      path: 'kitchenFile',
    });
    expect(read([{ ...head, equipment: { tins: 99 } }]).reason).toMatchObject({
      path: 'equipment.tins',
    });
    expect(read([head, first, first]).reason).toMatchObject({ line: 3, path: 'seq' });
    expect(read([head, first, { ...first, seq: 2 }]).reason).toMatchObject({ path: 'fact.id' });
    expect(read([head, { ...first, machineVersion: MACHINE_VERSION + 1 }]).reason).toMatchObject({
      line: 2,
      path: 'machineVersion',
    });
    expect(readLogFile('bread', MACHINE_VERSION).reason).toMatchObject({ line: 1 });
    expect(readLogFile('', MACHINE_VERSION).reason).toMatchObject({ expected: 'a log' });
    const newer = await house.readFile(JSON.stringify({ ...first, machineVersion: 99 }));
    expect(newer).toEqual({
      file: null,
      why: 'Line 1 is from a newer version. Load that version first.',
    });
  });
});
