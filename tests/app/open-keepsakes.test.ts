import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { afterEach, expect, it, vi } from 'vitest';
import type { KeepsakeRows } from '../../machines/ports.ts';
import { makeKeepsakeStore } from '../../src/adapters/log/keepsake-store.ts';
import { openKeepsakes } from '../../src/app/open-keepsakes.ts';
import { KEEPSAKE_LIMITS } from '../../src/core/log/keepsake-limits.ts';
import { PICTURE_LIMITS } from '../../src/core/pictures/picture-limits.ts';
import type { Told } from '../../src/screens/house.ts';
import { makeMemoryKeepsakes } from '../fakes/memory-keepsakes.ts';
import { jpeg, makeMemoryPictures } from '../fakes/memory-pictures.ts';
import { makeFakeWorld } from '../fakes/world.ts';

const open = async (rows: KeepsakeRows, parts: Parameters<typeof makeFakeWorld>[0] = {}) => {
  const told: Told[] = [];
  const world = makeFakeWorld(parts);
  return { log: await openKeepsakes(rows, world, (notice) => told.push(notice)), told, world };
};
const file = (...bytes: number[]) => new Blob([jpeg(...bytes)], { type: 'image/jpeg' });
const voice = (size = 4) => ({
  type: 'audio/webm;codecs=opus',
  bytes: new Uint8Array(size).fill(7),
});

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

it('shows what is said once it is written, after a reload too', async () => {
  const rows = makeMemoryKeepsakes();
  const { log, world } = await open(rows);
  const writing = log.say('f-1', { note: ' Sour ', tags: ['best', 'best'] });
  expect(log.abouts()).toEqual({});
  expect(await writing).toBeNull();
  expect(await log.say('f-1', { ate: ['n1'], home: true })).toBeNull();
  const said = {
    ...{ tags: ['best'], hidden: false, note: 'Sour', ate: ['n1'], home: true },
    at: world.clock.now(),
  };
  expect(log.abouts()).toEqual({ 'f-1': said });
  expect((await open(rows)).log.abouts()).toEqual({ 'f-1': said });
});

it('keeps photos and voices of a bake, the oldest first, after a reload too', async () => {
  const rows = makeMemoryKeepsakes();
  const { log, world } = await open(rows);
  expect(await log.takePhoto('f-1', file(1))).toBeNull();
  world.clock.turn(1_000);
  expect(await log.takeVoice('f-1', voice())).toBeNull();
  expect(await log.takePhoto('f-2', file(2))).toBeNull();
  const { log: again } = await open(rows);
  const kept = await again.keepsakes('f-1');
  expect(kept.map(({ kind, type, start }) => [kind, type, start])).toEqual([
    ['photo', 'image/jpeg', 'f-1'],
    ['voice', 'audio/webm;codecs=opus', 'f-1'],
  ]);
  expect(kept[0]!.bytes).toEqual(jpeg(1));
  expect([...rows.kept.keys()]).toEqual(
    kept.map(({ id }) => `f-1/${id}`).concat([expect.stringMatching(/^f-2\//) as string]),
  );
});

it('takes presses that come at once one after the other', async () => {
  const { log } = await open(makeMemoryKeepsakes());
  await Promise.all([
    log.say('f-1', { note: 'Sour' }),
    log.say('f-1', { tags: ['gift'] }),
    log.say('f-2', { hidden: true }),
    log.say('f-1', { home: true }),
  ]);
  expect(log.abouts()['f-1']).toMatchObject({ note: 'Sour', tags: ['gift'], home: true });
  expect(log.abouts()['f-2']?.hidden).toBe(true);
});

it('tells why a photo is not taken, and writes nothing of it', async () => {
  const rows = makeMemoryKeepsakes();
  const pictures = makeMemoryPictures((bytes) => (bytes.length === 0 ? 'none' : 'broken'));
  const { log } = await open(rows, { pictures });
  expect(await log.takePhoto('f-1', new Blob([]))).toBe('none');
  expect(await log.takePhoto('f-1', file(1))).toBe('broken');
  const huge = { size: PICTURE_LIMITS.bytes + 1 } as Blob;
  expect(await log.takePhoto('f-1', huge)).toBe('large');
  const gone = { size: 1, arrayBuffer: () => Promise.reject(new Error('gone')) } as unknown as Blob;
  expect(await log.takePhoto('f-1', gone)).toBe('broken');
  expect(rows.kept.size).toBe(0);
});

it('keeps nothing that could not be read back', async () => {
  const rows = makeMemoryKeepsakes();
  const { log } = await open(rows);
  expect(await log.takeVoice('f-1', voice(0))).toBe('closed');
  expect(await log.takeVoice('f-1', voice(KEEPSAKE_LIMITS.voiceBytes + 1))).toBe('closed');
  expect(await log.takeVoice('f-1', { ...voice(), type: 'text/html' })).toBe('closed');
  expect(rows.kept.size).toBe(0);
});

it('shows nothing that was not written: the disk is full, or shut, or it only shows', async () => {
  const rows = makeMemoryKeepsakes();
  const { log } = await open(rows);
  await log.say('f-1', { note: 'Sour' });
  await log.takePhoto('f-1', file(1));
  const { id } = (await log.keepsakes('f-1'))[0]!;
  const [said, kept] = [new Map(rows.said), new Map(rows.kept)];
  rows.fail('full');
  expect(await log.say('f-1', { note: 'Flat' })).toBe('full');
  expect(await log.takePhoto('f-1', file(2))).toBe('full');
  expect(await log.takeVoice('f-1', voice())).toBe('full');
  rows.fail('closed');
  expect(await log.erase('f-1', id)).toBe('closed');
  expect(await log.eraseAll('f-1')).toBe('closed');
  await expect(log.keepsakes('f-1')).rejects.toMatchObject({ trouble: 'closed' });
  rows.fail(null);
  expect(log.abouts()['f-1']?.note).toBe('Sour');
  const { log: shows } = await open(rows, { holds: false });
  expect(await shows.say('f-1', { note: 'Flat' })).toBe('closed');
  expect(await shows.takePhoto('f-1', file(2))).toBe('closed');
  expect(await shows.eraseAll('f-1')).toBe('closed');
  expect(shows.abouts()['f-1']?.note).toBe('Sour');
  expect([rows.said, rows.kept]).toEqual([said, kept]);
  // And what comes after is written again.
  expect(await log.say('f-1', { note: 'Flat' })).toBeNull();
  expect(log.abouts()['f-1']?.note).toBe('Flat');
});

it('rejects where it cannot be read, so that nothing is written over', async () => {
  const rows = makeMemoryKeepsakes();
  rows.fail('closed');
  await expect(open(rows)).rejects.toMatchObject({ trouble: 'closed' });
});

it('leaves out what cannot be read, and tells it without what stands in it', async () => {
  const rows = makeMemoryKeepsakes();
  const { log: first } = await open(rows);
  await first.say('f-1', { note: 'Sour' });
  await first.takePhoto('f-1', file(1));
  rows.said.set('f-2', { note: 'Zanzibar' });
  rows.kept.set('f-1/z', 'Zanzibar');
  const { log, told } = await open(rows);
  expect(Object.keys(log.abouts())).toEqual(['f-1']);
  expect(await log.keepsakes('f-1')).toHaveLength(1);
  expect(told.map(({ text }) => text)).toEqual([
    '1 of what is kept of bakes cannot be read and is left out. First: said.tags, expected a list of 0 to 2000, got nothing.',
    '1 of what is kept of bakes cannot be read and is left out. First: kept, expected an object, got a text.',
  ]);
});

/** Everything that a browser would find in the database, bytes as letters. */
const allOnDisk = async (store: KeepsakeRows): Promise<string> => {
  const rows = [...(await store.load()), ...(await store.loadKept())];
  return JSON.stringify(rows, (_, value: unknown) =>
    value instanceof Uint8Array ? String.fromCharCode(...value) : value,
  );
};

it('leaves nothing of what is erased on the disk but that it was there', async () => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  const store = makeKeepsakeStore('loafward-test');
  const { log, world } = await open(store);
  const secret = [...'Zanzibar'].map((letter) => letter.charCodeAt(0));
  await log.say('f-1', {
    ...{ note: 'Zanzibar liked it', ate: ['n-Zanzibar'], home: true, hidden: true },
    tags: ['best', 'Zanzibar’s feast'],
  });
  await log.takePhoto('f-1', file(...secret));
  await log.takeVoice('f-1', { type: 'audio/webm', bytes: Uint8Array.from(secret) });
  await log.takePhoto('f-2', file(9));
  const its = await log.keepsakes('f-1');
  expect((await allOnDisk(store)).match(/Zanzibar/g)).toHaveLength(5);
  expect(await log.erase('f-1', its[0]!.id)).toBeNull();
  expect(await log.keepsakes('f-1')).toEqual([its[1]]);
  expect((await allOnDisk(store)).match(/Zanzibar/g)).toHaveLength(4);
  expect(await log.eraseAll('f-1')).toBeNull();
  expect(await log.keepsakes('f-1')).toEqual([]);
  expect(await log.keepsakes('f-2')).toHaveLength(1);
  const now = world.clock.now();
  expect(log.abouts()['f-1']).toEqual({
    ...{ tags: ['best'], hidden: true, note: '', ate: [], home: false, at: now },
  });
  expect(await allOnDisk(store)).not.toContain('Zanzibar');
  expect(await store.loadKept('f-1')).toEqual(
    new Map(its.map(({ id }) => [`f-1/${id}`, { gone: true }])),
  );
  // Since when is kept through what is said later: a file of before brings nothing back.
  await log.say('f-1', { note: 'New' });
  expect((await store.load()).get('f-1')).toMatchObject({ note: 'New', erased: now });
  const { log: again } = await open(store);
  await again.say('f-1', { note: 'Newer' });
  expect((await store.load()).get('f-1')).toMatchObject({ note: 'Newer', erased: now });
});

it('erases what cannot be read of that bake too', async () => {
  const rows = makeMemoryKeepsakes();
  rows.kept.set('f-1/z', 'Zanzibar');
  const { log } = await open(rows);
  expect(await log.eraseAll('f-1')).toBeNull();
  expect(rows.kept).toEqual(new Map([['f-1/z', { gone: true }]]));
});
