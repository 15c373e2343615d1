import { createRoot } from 'solid-js';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { StoreError } from '../../machines/ports.ts';
import { openHouse } from '../../src/app/open-house.ts';
import type { House } from '../../src/screens/house.ts';
import { serveFormulas } from '../fakes/baking.ts';
import { loadedLater } from '../fakes/loaded-later.ts';
import { makeMemoryCircle } from '../fakes/memory-circle.ts';
import { asOld, bodyOf, sealed } from '../fakes/saved-file.ts';
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
    const lines = asOld(await saved(house, true));
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
    // A head that a still older program wrote has no circle behind it.
    const older = await read(head({ kitchenFile: 2 }));
    expect(older).toContain('Line 2 ');
    expect(older).not.toContain('Zanzibar');
  });

  it('names no name where a file with a sum has a row that cannot be read', async () => {
    const house = await started(makeFakeWorld({ circle: circleOf('o1', 'o2') }));
    const [contents, first, ...rest] = bodyOf(await saved(house, true));
    const { why } = await house.readFile(
      sealed([contents!, first!.replace('Zanzibar', ' '), ...rest]),
    );
    expect(why).toMatch(/^Line 3 .* at neighbours\.name:/);
    expect(why).not.toMatch(/Zanzibar|sesame/);
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
