import { createRoot } from 'solid-js';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { MACHINE_VERSION } from '../../machines/kitchen/kitchen.ts';
import { StoreError } from '../../machines/ports.ts';
import { openHouse } from '../../src/app/open-house.ts';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { readLogFile } from '../../src/core/records/read-log-file.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import type { House } from '../../src/screens/house.ts';
import { serveFormulas } from '../fakes/baking.ts';
import { loadedLater } from '../fakes/loaded-later.ts';
import { jpeg, makeMemoryPictures } from '../fakes/memory-pictures.ts';
import { sumIn } from '../fakes/saved-file.ts';
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
const readOld = (file: string) => readLogFile(file, MACHINE_VERSION, sumIn(file));
/** As a program of before the sum wrote it. */
const text = (house: House): string =>
  [{ kitchenFile: 1, equipment: house.equipment() }, ...house.records()]
    .map((line) => `${JSON.stringify(line)}\n`)
    .join('');

describe('a saved log', () => {
  it('gives an empty kitchen the same log, place and equipment, but not how it is heard there', async () => {
    const house = await started(makeFakeWorld());
    const sound = { at: house.now(), heard: 'yes' } as const;
    house.equip({ scale: 5, tins: 3, sound, readsOwn: true, ear: 'learned' });
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
    const own = { sound: null, readsOwn: false, ear: 'off' };
    expect(again.equipment()).toMatchObject({ scale: 5, tins: 3, ...own });
  });

  it('is refused whole, by line and name, where any of it cannot be read', async () => {
    const house = await started(makeFakeWorld());
    const rows = house.records();
    const read = (lines: readonly unknown[]) =>
      readOld(lines.map((line) => JSON.stringify(line)).join('\n'));
    const head = { kitchenFile: 1, equipment: EQUIPMENT };
    const [first] = rows as [LogRecord];
    expect(read([head, ...rows]).file!.records).toHaveLength(rows.length);
    expect(read(rows).file!.records).toHaveLength(rows.length);
    expect(read([head]).file!.records).toEqual([]);
    expect(read([{ ...head, kitchenFile: 5 }, ...rows]).reason).toMatchObject({
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
    expect(readOld('bread').reason).toMatchObject({ line: 1 });
    expect(readOld('').reason).toMatchObject({ expected: 'a log' });
    const newer = await house.readFile(JSON.stringify({ ...first, machineVersion: 99 }));
    expect(newer).toEqual({
      file: null,
      why: 'Line 1 is from a newer version. Load that version first.',
    });
  });

  it('brings the pictures back, each in the place of the one that is here, which may be taken back', async () => {
    const house = await started(makeFakeWorld());
    const lines = text(house).trimEnd().split('\n');
    const head = JSON.stringify({ kitchenFile: 2, equipment: house.equipment() });
    const picture = JSON.stringify({ picture: 'lane-wheat', jpeg: '/9j/Bw==' });
    const whole = [head, picture, ...lines.slice(1)].join('\n');
    const pictures = makeMemoryPictures();
    const world = makeFakeWorld({ at: house.now(), pictures });
    pictures.rows.set('lane-wheat', { now: jpeg(1), before: null });
    pictures.rows.set('olive-seed', { now: jpeg(2) });
    const empty = await open(world);
    const { file } = await empty.readFile(whole);
    expect(file!.pictures).toEqual([{ picture: 'lane-wheat', jpeg: '/9j/Bw==' }]);
    await empty.takeFile(file!);
    expect(pictures.rows).toEqual(
      new Map([
        ['lane-wheat', { now: jpeg(7), before: jpeg(1) }],
        ['olive-seed', { now: jpeg(2) }],
      ]),
    );
    expect(world.store.rows.size).toBe(house.records().length);
  });

  it('writes neither log nor pictures where either cannot be', async () => {
    const house = await started(makeFakeWorld());
    const picture = { picture: 'lane-wheat', jpeg: '/9j/Bw==' };
    const lines = text(house).trimEnd().split('\n');
    const whole = [lines[0]!, JSON.stringify(picture), ...lines.slice(1)].join('\n');
    const pictures = makeMemoryPictures();
    const world = makeFakeWorld({ at: house.now(), pictures });
    pictures.rows.set('lane-wheat', { now: jpeg(1), before: jpeg(2) });
    const empty = await open(world);
    const { file } = await empty.readFile(whole);
    world.store.fail('full');
    await expect(empty.takeFile(file!)).rejects.toThrow(StoreError);
    const was = new Map([['lane-wheat', { now: jpeg(1), before: jpeg(2) }]]);
    expect(pictures.rows).toEqual(was);
    pictures.fail('full');
    await expect(empty.takeFile(file!)).rejects.toThrow(StoreError);
    expect(world.store.rows.size).toBe(0);
    pictures.fail(null);
    expect(pictures.rows).toEqual(was);
  });

  it('is refused by a picture that is none, or is a formula’s second', async () => {
    const house = await started(makeFakeWorld());
    const head = { kitchenFile: 2, equipment: EQUIPMENT };
    const read = (...lines: readonly unknown[]) =>
      readOld(lines.map((line) => JSON.stringify(line)).join('\n'));
    const good = { picture: 'lane-wheat', jpeg: '/9j/Bw==' };
    const [first] = house.records();
    expect(read(head, good, first).file).toMatchObject({ pictures: [good], records: [first] });
    expect(read(head, good, good, first).reason).toMatchObject({ line: 3, path: 'picture' });
    expect(read(head, { ...good, jpeg: 'bread' }, first).reason).toMatchObject({
      ...{ line: 2, path: 'jpeg', expected: 'a JPEG in base64', got: '"bread"' },
    });
    // A bare log has none, and behind the log none is looked for.
    expect(read(good, first).reason).toMatchObject({ line: 1 });
    expect(read(head, first, good).reason).toMatchObject({ line: 3 });
  });

  it('is saved without the pictures where they cannot be read, and says so', async () => {
    const saved: string[] = [];
    vi.stubGlobal('document', {
      createElement: () => ({ click: () => saved.push('saved') }),
    });
    const address = vi.spyOn(URL, 'createObjectURL').mockReturnValue('blob:loafward/1');
    const pictures = makeMemoryPictures();
    const house = await started(makeFakeWorld({ pictures }));
    house.saveAsFile();
    await vi.waitFor(() => expect(house.equipment().savedAt).not.toBeNull());
    expect(house.told()).toEqual([]);
    pictures.fail('closed');
    house.saveAsFile();
    await vi.waitFor(() => expect(saved).toHaveLength(2));
    await vi.waitFor(() => expect(house.told()).toHaveLength(1));
    expect(house.told()[0]!.text).toContain('all but them');
    address.mockRestore();
  });
});
