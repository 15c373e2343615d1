import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { StoreError } from '../../../machines/ports.ts';
import { openVoiceRows } from '../../../src/adapters/ear/open-voice-rows.ts';
import { makeVoiceStore } from '../../../src/adapters/ear/voice-store.ts';
import { readPeople } from '../../../src/core/ear/read-person.ts';
import { aPerson } from '../../fakes/said-phrases.ts';

const NAME = 'loafward-test';
const boat = aPerson(['done'], { mark: 'boat' });
const row = { ...boat, tongue: 'en' };

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

it('keeps voices by their keys in a database of its own, and lets go of them', async () => {
  const store = makeVoiceStore(NAME);
  expect(await store.load()).toEqual(new Map());
  await store.write(
    new Map([
      ['en/sun', { ...row, id: 'sun' }],
      ['en/boat', row],
    ]),
  );
  await store.write(new Map([['en/sun', null]]));
  store.close();
  const rows = await makeVoiceStore(NAME).load();
  expect([...rows.keys()]).toEqual(['en/boat']);
  expect(readPeople(rows, 'en')).toEqual([boat]);
  expect(await indexedDB.databases()).toEqual([{ name: `${NAME}-voices`, version: 1 }]);
});

it('writes all of a change in one strictly durable transaction, or nothing', async () => {
  const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
  const store = makeVoiceStore(NAME);
  await store.write(new Map([['en/boat', row]]));
  expect(begun).toHaveBeenLastCalledWith('voices', 'readwrite', { durability: 'strict' });
  expect(begun.mock.calls.filter(([, mode]) => mode === 'readwrite')).toHaveLength(1);
  const bad = new Map<string, unknown>([
    ['en/boat', null],
    ['en/sun', { id: 'sun', of: () => 0 }],
  ]);
  await expect(store.write(bad)).rejects.toBeInstanceOf(StoreError);
  expect([...(await store.load()).keys()]).toEqual(['en/boat']);
});

it('knows nobody in a rehearsal, and nothing of that is written', async () => {
  await openVoiceRows(true).write(new Map([['en/boat', row]]));
  const rehearsed = openVoiceRows(false);
  expect(await rehearsed.load()).toEqual(new Map());
  await rehearsed.write(
    new Map([
      ['en/sun', row],
      ['en/moon', row],
    ]),
  );
  await rehearsed.write(new Map([['en/moon', null]]));
  expect(await rehearsed.load()).toEqual(new Map([['en/sun', row]]));
  expect([...(await openVoiceRows(true).load()).keys()]).toEqual(['en/boat']);
  expect(await openVoiceRows(false).load()).toEqual(new Map());
});
