import { createRoot } from 'solid-js';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { MACHINE_VERSION } from '../../machines/kitchen/kitchen.ts';
import { StoreError } from '../../machines/ports.ts';
import { openHouse } from '../../src/app/open-house.ts';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { goesOn, readLogFile } from '../../src/core/records/read-log-file.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import type { House } from '../../src/screens/house.ts';
import { serveFormulas } from '../fakes/baking.ts';
import { loadedLater } from '../fakes/loaded-later.ts';
import { makeMemoryCircle } from '../fakes/memory-circle.ts';
import { jpeg, makeMemoryPictures } from '../fakes/memory-pictures.ts';
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
    expect(read([{ ...head, kitchenFile: 4 }, ...rows]).reason).toMatchObject({
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
    const file = { equipment: null, pictures: [picture], circle: null, bakes: 1, last: null };
    const pictures = makeMemoryPictures();
    const world = makeFakeWorld({ at: house.now(), pictures });
    pictures.rows.set('lane-wheat', { now: jpeg(1), before: jpeg(2) });
    const empty = await open(world);
    world.store.fail('full');
    await expect(empty.takeFile({ ...file, records: house.records() })).rejects.toThrow(StoreError);
    const was = new Map([['lane-wheat', { now: jpeg(1), before: jpeg(2) }]]);
    expect(pictures.rows).toEqual(was);
    pictures.fail('full');
    await expect(empty.takeFile({ ...file, records: house.records() })).rejects.toThrow(StoreError);
    expect(world.store.rows.size).toBe(0);
    pictures.fail(null);
    expect(pictures.rows).toEqual(was);
  });

  it('is refused by a picture that is none, or is a formula’s second', async () => {
    const house = await started(makeFakeWorld());
    const head = { kitchenFile: 2, equipment: EQUIPMENT };
    const read = (...lines: readonly unknown[]) =>
      readLogFile(lines.map((line) => JSON.stringify(line)).join('\n'), MACHINE_VERSION);
    const good = { picture: 'lane-wheat', jpeg: '/9j/Bw==' };
    const [first] = house.records();
    expect(read(head, good, first)).toMatchObject({ pictures: [good], records: [first] });
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

describe('the circle in a saved log', () => {
  const ZANZIBAR = { id: 'z', name: 'Zanzibar', watch: ['sesame'] };
  const order = (id: string) => ({
    ...{ id, who: 'z', day: '2031-05-03', at: null, lines: [], paid: false, handed: null },
    ...{ made: 0, standing: null },
  });
  const circleOf = (...ids: readonly string[]) =>
    makeMemoryCircle([
      ['neighbours:z', ZANZIBAR],
      ['before', { puts: [{ list: 'neighbours', id: 'z', thing: ZANZIBAR }] }],
      ...ids.map((id) => [`orders:${id}`, order(id)] as const),
    ]);
  let files: Blob[];
  beforeEach(() => {
    files = [];
    vi.stubGlobal('document', { createElement: () => ({ click: () => undefined }) });
    vi.spyOn(URL, 'createObjectURL').mockImplementation(
      (file) => `blob:loafward/${files.push(file as Blob)}`,
    );
  });
  afterEach(() => vi.restoreAllMocks());
  const saved = async (house: House, names?: boolean): Promise<string> => {
    const before = files.length;
    house.saveAsFile(names);
    await vi.waitFor(() => expect(files).toHaveLength(before + 1));
    return files[before]!.text();
  };

  it('has marks for names unless they are asked for, and then for that once', async () => {
    const house = await started(makeFakeWorld({ circle: circleOf('o1') }));
    const whole = await saved(house);
    expect(whole).toContain('"N 1"');
    expect(whole).not.toMatch(/Zanzibar|sesame/);
    expect(await saved(house, true)).toContain('"Zanzibar"');
    expect(await saved(house)).not.toMatch(/Zanzibar|sesame/);
    expect(JSON.stringify(house.records())).not.toContain('Zanzibar');
  });

  it('comes into a kitchen without one, and writes over nothing in another', async () => {
    const house = await started(makeFakeWorld({ circle: circleOf('o1', 'o2') }));
    const whole = await saved(house, true);
    const empty = makeFakeWorld({ at: house.now() });
    const there = await open(empty);
    const { file, why } = await there.readFile(whole);
    expect(why).toBeNull();
    expect(file!.records).toEqual(house.records());
    await there.takeFile(file!);
    expect((await (await open(empty)).circle()).circle()).toMatchObject({
      neighbours: [ZANZIBAR],
      orders: [order('o1'), order('o2')],
    });
    const circle = makeMemoryCircle([
      ['neighbours:z', { ...ZANZIBAR, name: 'Z' }],
      ['orders:o1', { ...order('o1'), paid: true }],
      ['orders:o2', 'cannot be read'],
    ]);
    const was = [...circle.rows];
    const own = await open(makeFakeWorld({ at: house.now(), circle }));
    await own.takeFile((await own.readFile(whole)).file!);
    expect([...circle.rows]).toEqual(was);
  });

  it('brings nobody back who was erased', async () => {
    const house = await started(makeFakeWorld({ circle: circleOf('o1') }));
    const whole = await saved(house, true);
    const circle = makeMemoryCircle([['gone:z', true]]);
    const there = await open(makeFakeWorld({ at: house.now(), circle }));
    await there.takeFile((await there.readFile(whole)).file!);
    expect([...circle.rows.keys()]).toEqual(['gone:z', 'orders:o1']);
  });

  it('is left as it was where the log cannot be written', async () => {
    const house = await started(makeFakeWorld({ circle: circleOf('o1') }));
    const whole = await saved(house, true);
    const circle = makeMemoryCircle([['orders:o9', order('o9')]]);
    const world = makeFakeWorld({ at: house.now(), circle });
    const there = await open(world);
    const { file } = await there.readFile(whole);
    world.store.fail('full');
    await expect(there.takeFile(file!)).rejects.toThrow(StoreError);
    expect([...circle.rows.keys()]).toEqual(['orders:o9']);
    world.store.fail(null);
    circle.fail('full');
    await expect(there.takeFile(file!)).rejects.toThrow(StoreError);
    expect(world.store.rows.size).toBe(0);
  });

  it('is refused whole where it was cut or changed, by line and name, and no name is told', async () => {
    const house = await started(makeFakeWorld({ circle: circleOf('o1', 'o2') }));
    const lines = (await saved(house, true)).trimEnd().split('\n');
    const read = async (rows: readonly string[]) => (await house.readFile(rows.join('\n'))).why;
    expect(await read(lines)).toBeNull();
    expect(JSON.parse(lines[0]!)).toMatchObject({ kitchenFile: 3, circle: 3 });
    const head = (part: object) => [
      JSON.stringify({ ...(JSON.parse(lines[0]!) as object), ...part }),
      ...lines.slice(1),
    ];
    const without = (at: number) => lines.toSpliced(at, 1);
    const other = (at: number, from: string | RegExp, to: string) =>
      lines.with(at, lines[at]!.replace(from, to));
    const whys = [
      await read(lines.slice(0, 2)),
      await read(without(1)),
      await read(other(1, 'Zanzibar', ' ')),
      await read(other(1, /.{9}$/, '')),
      await read(other(2, '2031-05-03', 'Zanzibar')),
      await read(head({ circle: 2 })),
      await read(head({ circle: 'Zanzibar' })),
      await read(head({ circle: undefined })),
    ];
    expect(whys.map((why) => /Line (\d+) .* at ([\w.]+):/.exec(why!)?.slice(1))).toEqual([
      ['2', 'circle'],
      ['4', 'circle'],
      ['2', 'neighbours.name'],
      ['2', 'circle'],
      ['3', 'orders.day'],
      ['4', 'seq'],
      ['1', 'circle'],
      ['1', 'circle'],
    ]);
    expect(whys.join('\n')).not.toMatch(/Zanzibar|sesame/);
    // A head that an older program wrote has no circle behind it.
    const older = await read(head({ kitchenFile: 2 }));
    expect(older).toContain('Line 2 ');
    expect(older).not.toContain('Zanzibar');
  });

  it('is left out where it cannot be read, and that is told', async () => {
    const circle = circleOf('o1');
    const house = await started(makeFakeWorld({ circle }));
    circle.fail('closed');
    expect(await saved(house, true)).not.toContain('Zanzibar');
    await vi.waitFor(() =>
      expect(house.told().map(({ text: words }) => words)).toContain(
        'The circle could not be read. The saved file holds all but it.',
      ),
    );
  });
});
