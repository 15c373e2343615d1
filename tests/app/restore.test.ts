import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { StoreError } from '../../machines/ports.ts';
import type { FileRows } from '../../src/core/records/log-file.ts';
import { serveFormulas } from '../fakes/baking.ts';
import { loadedLater } from '../fakes/loaded-later.ts';
import { jpeg } from '../fakes/memory-pictures.ts';
import { bodyOf } from '../fakes/saved-file.ts';
import {
  bakes,
  newTablet,
  opened,
  savedBy,
  takes,
  wiped,
  type Tablet,
} from '../fakes/two-tablets.ts';

beforeEach(() => serveFormulas());
afterEach(() => vi.unstubAllGlobals());
afterAll(async () => {
  await loadedLater();
});

/** A loaded machine may be long in importing. */
const WITHIN = { timeout: 20_000 };

/** The lines of a file's facts, its own and those of other tablets. */
function factLines(file: string): readonly string[] {
  const [contents, ...lines] = bodyOf(file);
  const { rows } = JSON.parse(contents!) as { rows: FileRows };
  const facts = rows.records + rows.others.reduce((sum, one) => sum + one, 0);
  return lines.slice(lines.length - facts);
}
const factsOf = (tablet: Tablet): ReadonlySet<string> =>
  new Set([
    ...tablet.house.records().map(({ fact }) => fact.id),
    ...[...tablet.disk.otherLogs.logs.values()].flatMap((rows) =>
      rows.map((row) => (row as { fact: { id: string } }).fact.id),
    ),
  ]);
const disksOf = ({ disk }: Tablet): string =>
  JSON.stringify([
    [...disk.store.rows],
    [...disk.circle.rows],
    [...disk.keepsakes.said],
    [...disk.keepsakes.kept].map(([key, row]) => [key, { ...(row as object) }]),
    [...disk.otherLogs.logs],
    [...disk.pictures.rows].map(([key, row]) => [key, { ...row }]),
  ]);

describe('a tablet that was wiped', () => {
  it('has the same facts from its file, byte for byte, and nothing changes by taking it twice', async () => {
    const counter = await newTablet('counter');
    const start = await bakes(counter);
    await counter.house.take({ kind: 'press', who: 'oven', act: 'ovenOn', lanes: [] });
    await (
      await counter.house.log()
    ).say(start, { note: 'Good “ear”\u2028two lines', tags: ['best'] });
    counter.disk.pictures.rows.set('lane-wheat', { now: jpeg(3) });
    const file = await savedBy(counter);
    const first = await takes(await wiped(counter), file);
    expect(first.comes).toBe('all');
    expect(first.tablet.house.records()).toEqual(counter.house.records());
    const again = await savedBy(first.tablet);
    expect(factLines(again)).toEqual(factLines(file));
    expect(factLines(file)).toHaveLength(counter.house.records().length);
    expect(again).toBe(file);
    const before = disksOf(first.tablet);
    const second = await takes(first.tablet, file);
    expect(second.comes).toBe('already');
    expect(disksOf(second.tablet)).toBe(before);
  });

  it('has the logs of other tablets back beside its own', async () => {
    const [counter, harbour] = [await newTablet('counter'), await newTablet('harbour')];
    await bakes(counter);
    await bakes(harbour);
    const { tablet } = await takes(counter, await savedBy(harbour));
    const file = await savedBy(tablet);
    const { tablet: back } = await takes(await wiped(tablet), file);
    expect(await savedBy(back)).toBe(file);
    expect(factsOf(back)).toEqual(factsOf(tablet));
    expect((await back.house.log()).others()).toEqual([harbour.house.records()]);
  });
});

describe('the files of two tablets', () => {
  it('lose nothing whichever is taken first; what is here stays, and says so', async () => {
    const [counter, harbour] = [await newTablet('counter'), await newTablet('harbour')];
    await bakes(counter);
    await bakes(harbour);
    const [one, two] = [await savedBy(counter), await savedBy(harbour)];
    const own = counter.house.records();
    const told = (await counter.house.readFile(two)).file;
    expect(told).toMatchObject({ comes: 'beside', fresh: 1 });
    const both = await takes(counter, two);
    expect(both.tablet.house.records()).toEqual(own);
    const other = await takes(harbour, one);
    expect(factsOf(both.tablet)).toEqual(factsOf(other.tablet));
    expect((await both.tablet.house.log()).others()).toEqual([harbour.house.records()]);
    const wipedOne = await takes((await takes(await wiped(counter), two)).tablet, one);
    expect(factsOf(wipedOne.tablet)).toEqual(factsOf(both.tablet));
  });

  it('bring a longer log in the place of its beginning, and keep a branch by itself', async () => {
    const harbour = await newTablet('harbour');
    await bakes(harbour);
    const early = await savedBy(harbour);
    const { tablet: branch } = await takes(await newTablet('jetty'), early);
    await bakes(branch);
    await bakes(harbour);
    const late = await savedBy(harbour);
    let counter = await newTablet('counter');
    await bakes(counter);
    for (const [file, comes, logs] of [
      [early, 'beside', 1],
      [early, 'already', 1],
      [late, 'beside', 1],
      [early, 'already', 1],
      [await savedBy(branch), 'beside', 2],
      [late, 'already', 2],
    ] as const) {
      const taken = await takes(counter, file);
      counter = taken.tablet;
      expect(taken.comes).toBe(comes);
      expect(counter.disk.otherLogs.logs.size).toBe(logs);
    }
    const others = (await counter.house.log()).others();
    expect(others).toEqual(
      expect.arrayContaining([harbour.house.records(), branch.house.records()]),
    );
    // The one that went on from its own earlier file takes its log on.
    const { tablet: back } = await takes(await wiped(harbour), early);
    expect((await back.house.readFile(late)).file!.comes).toBe('goesOn');
  });

  it('leave what the kitchen bakes with, and its breads’ pictures, as they are here', async () => {
    const [counter, harbour] = [await newTablet('counter'), await newTablet('harbour')];
    await bakes(counter);
    await bakes(harbour);
    harbour.house.equip({ tins: 6 });
    harbour.disk.pictures.rows.set('lane-wheat', { now: jpeg(1) });
    harbour.disk.pictures.rows.set('olive-seed', { now: jpeg(2) });
    counter.disk.pictures.rows.set('lane-wheat', { now: jpeg(3), before: null });
    const tins = counter.house.equipment().tins;
    const { tablet } = await takes(counter, await savedBy(harbour));
    expect(counter.house.equipment().tins).toBe(tins);
    expect(tablet.disk.pictures.rows).toEqual(
      new Map([
        ['lane-wheat', { now: jpeg(3), before: null }],
        ['olive-seed', { now: jpeg(2), before: null }],
      ]),
    );
  });
});

describe('formulas that only another tablet has', () => {
  it('are on offer here, go on from there, and leave the same id begun here as it is', async () => {
    const [counter, harbour] = [await newTablet('counter'), await newTablet('harbour')];
    await bakes(harbour);
    const wheat = harbour.house.formulas()[0]!.formula!;
    const named = (id: string, name: string) => ({ ...wheat, id, name });
    await harbour.house.keepFormula(named('jetty-loaf', 'Jetty loaf'));
    await harbour.house.keepFormula(named('quay-loaf', 'Quay loaf of theirs'));
    await harbour.house.keepFormula(named('off-loaf', 'Off loaf'));
    await harbour.house.dropFormula('off-loaf');
    await harbour.house.keepFormula({ ...wheat, salt: 1.1 });
    await bakes(counter);
    await counter.house.keepFormula(named('quay-loaf', 'Quay loaf of ours'));
    const { tablet } = await takes(counter, await savedBy(harbour));
    const offered = () => tablet.house.formulas().flatMap(({ formula }) => formula ?? []);
    await vi.waitFor(() => expect(offered().map(({ id }) => id)).toContain('jetty-loaf'), WITHIN);
    const names = offered().map(({ name }) => name);
    expect(names).toContain('Quay loaf of ours');
    expect(names).not.toContain('Quay loaf of theirs');
    expect(names).not.toContain('Off loaf');
    expect(offered().find(({ id }) => id === wheat.id)).toMatchObject({ version: wheat.version });
    const jetty = offered().find(({ id }) => id === 'jetty-loaf')!;
    const bake = await tablet.house.begin({
      ...{ formula: jetty, loaves: 1, kitchen: 22, from: 'bulk.proving' },
    });
    expect(bake).not.toBeNull();
    expect(await tablet.house.keepFormula({ ...jetty, salt: 1.5 })).toMatchObject({ version: 2 });
    const entry = tablet.house.book().find(({ id }) => id === 'jetty-loaf')!;
    expect(entry.versions.map(({ formula }) => formula.version)).toEqual([1, 2]);
    expect(entry.baked).toMatchObject({ version: 1 });
  });
});

describe('a file that is taken in', () => {
  it('is written to every database or to none', async () => {
    const [counter, harbour] = [await newTablet('counter'), await newTablet('harbour')];
    await bakes(counter);
    const start = await bakes(harbour);
    await (await harbour.house.log()).say(start, { note: 'Late.' });
    harbour.disk.pictures.rows.set('olive-seed', { now: jpeg(2) });
    harbour.disk.circle.rows.set('neighbours:z', { id: 'z', name: 'Z', watch: [] });
    const file = await savedBy(harbour);
    const before = disksOf(counter);
    for (const fail of ['pictures', 'circle', 'keepsakes', 'otherLogs'] as const) {
      const { file: found } = await counter.house.readFile(file);
      counter.disk[fail].fail('full');
      await expect(counter.house.takeFile(found!)).rejects.toThrow(StoreError);
      counter.disk[fail].fail(null);
      expect(disksOf(counter)).toBe(before);
    }
    const empty = await wiped(counter);
    const none = disksOf(empty);
    const { file: found } = await empty.house.readFile(file);
    empty.disk.store.fail('full');
    await expect(empty.house.takeFile(found!)).rejects.toThrow(StoreError);
    empty.disk.store.fail(null);
    expect(disksOf(empty)).toBe(none);
  });

  it('is not, where something was noted since it was told what becomes of it', async () => {
    const counter = await newTablet('counter');
    await bakes(counter);
    const early = await opened(counter, counter.house.now());
    const file = await savedBy(counter);
    const empty = await wiped(early);
    const { file: found } = await empty.house.readFile(file);
    expect(found!.comes).toBe('all');
    await bakes(empty);
    const own = empty.house.records();
    await expect(empty.house.takeFile(found!)).rejects.toMatchObject({ trouble: 'taken' });
    expect(empty.disk.store.rows.size).toBe(own.length);
  });

  it('is refused where another tablet’s log here cannot be read, and that log is left as it is', async () => {
    const [counter, harbour] = [await newTablet('counter'), await newTablet('harbour')];
    await bakes(harbour);
    counter.disk.otherLogs.logs.set('broken', [{ seq: 1 }]);
    const file = await savedBy(harbour);
    counter.disk.otherLogs.fail('closed');
    await expect(counter.house.readFile(file)).rejects.toThrow(StoreError);
    counter.disk.otherLogs.fail(null);
    const { tablet } = await takes(counter, file);
    expect(tablet.disk.otherLogs.logs.get('broken')).toEqual([{ seq: 1 }]);
    expect((await tablet.house.log()).others()).toEqual([]);
    expect(tablet.house.told().map(({ text }) => text)).toEqual([
      expect.stringContaining('row 1 cannot be read at machineVersion'),
    ]);
    expect(bodyOf(await savedBy(tablet))[0]).toContain('"others":[]');
    await vi.waitFor(
      () =>
        expect(tablet.house.told().map(({ text }) => text)).toContain(
          'A log of another tablet could not be read. The saved file holds all but that.',
        ),
      WITHIN,
    );
  });
});
