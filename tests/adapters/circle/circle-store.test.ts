import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { StoreError } from '../../../machines/ports.ts';
import { makeCircleStore } from '../../../src/adapters/circle/circle-store.ts';
import { openCircleRows } from '../../../src/adapters/circle/open-circle-rows.ts';

const NAME = 'loafward-test';

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

it('keeps rows by their keys in a database of its own, and lets go of them', async () => {
  const store = makeCircleStore(NAME);
  expect(await store.load()).toEqual(new Map());
  await store.write(
    new Map<string, unknown>([
      ['neighbours:b', { id: 'b' }],
      ['neighbours:a', { id: 'a' }],
      ['ways', { times: 3 }],
    ]),
  );
  await store.write(
    new Map<string, unknown>([
      ['neighbours:b', null],
      ['before', { puts: [] }],
    ]),
  );
  store.close();
  expect(await makeCircleStore(NAME).load()).toEqual(
    new Map<string, unknown>([
      ['before', { puts: [] }],
      ['neighbours:a', { id: 'a' }],
      ['ways', { times: 3 }],
    ]),
  );
  expect(await indexedDB.databases()).toEqual([{ name: `${NAME}-circle`, version: 1 }]);
});

it('writes all of a change in one strictly durable transaction, or nothing', async () => {
  const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
  const store = makeCircleStore(NAME);
  await store.write(new Map([['orders:a', { id: 'a' }]]));
  expect(begun).toHaveBeenLastCalledWith('circle', 'readwrite', { durability: 'strict' });
  expect(begun.mock.calls.filter(([, mode]) => mode === 'readwrite')).toHaveLength(1);
  const bad = new Map<string, unknown>([
    ['orders:a', { id: 'a', paid: true }],
    ['orders:b', { id: 'b', of: () => 0 }],
  ]);
  await expect(store.write(bad)).rejects.toBeInstanceOf(StoreError);
  expect(await store.load()).toEqual(new Map([['orders:a', { id: 'a' }]]));
});

it('is empty in a rehearsal, and nothing of that is written', async () => {
  await openCircleRows(true).write(new Map([['orders:a', { id: 'a' }]]));
  const rehearsed = openCircleRows(false);
  expect(await rehearsed.load()).toEqual(new Map());
  await rehearsed.write(
    new Map<string, unknown>([
      ['orders:b', { id: 'b' }],
      ['orders:c', { id: 'c' }],
    ]),
  );
  await rehearsed.write(new Map([['orders:c', null]]));
  expect(await rehearsed.load()).toEqual(new Map([['orders:b', { id: 'b' }]]));
  expect([...(await openCircleRows(true).load()).keys()]).toEqual(['orders:a']);
  expect(await openCircleRows(false).load()).toEqual(new Map());
});
