import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { StoreError } from '../../../machines/ports.ts';
import { makeKeepsakeStore } from '../../../src/adapters/log/keepsake-store.ts';
import { openKeepsakeRows } from '../../../src/adapters/log/open-keepsake-rows.ts';

const NAME = 'loafward-test';
const NONE = new Map<string, unknown>();
const photo = (...bytes: number[]) => ({ kind: 'photo', bytes: Uint8Array.from(bytes) });

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

it('keeps what is said apart from what is kept, in a database of its own', async () => {
  const store = makeKeepsakeStore(NAME);
  expect(await store.load()).toEqual(new Map());
  expect(await store.loadKept()).toEqual(new Map());
  await store.write(
    new Map([['f-1', { note: 'sour' }]]),
    new Map([
      ['f-1/a', photo(1)],
      ['f-2/a', photo(2)],
      ['f-1/b', photo(3)],
    ]),
  );
  await store.write(NONE, new Map<string, unknown>([['f-1/b', null]]));
  store.close();
  const again = makeKeepsakeStore(NAME);
  expect(await again.load()).toEqual(new Map([['f-1', { note: 'sour' }]]));
  expect([...(await again.loadKept()).keys()]).toEqual(['f-1/a', 'f-2/a']);
  expect(await indexedDB.databases()).toEqual([{ name: `${NAME}-keepsakes`, version: 1 }]);
});

it('gives what is kept of one bake, and of none whose id only begins like it', async () => {
  const store = makeKeepsakeStore(NAME);
  const keys = ['f-1/a', 'f-1/b', 'f-10/a', 'f-1', 'f/a', 'f-2/a'];
  await store.write(NONE, new Map(keys.map((key) => [key, photo(1)])));
  expect([...(await store.loadKept('f-1')).keys()]).toEqual(['f-1/a', 'f-1/b']);
  expect([...(await store.loadKept('g')).keys()]).toEqual([]);
});

it('writes what is said and kept in one strictly durable transaction, or nothing', async () => {
  const store = makeKeepsakeStore(NAME);
  await store.write(new Map([['f-1', 'first']]), new Map([['f-1/a', photo(1)]]));
  const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
  const bad = new Map<string, unknown>([
    ['f-1/a', photo(9)],
    ['f-1/b', () => 0],
  ]);
  await expect(store.write(new Map([['f-1', 'second']]), bad)).rejects.toBeInstanceOf(StoreError);
  expect(begun.mock.calls).toEqual([[['said', 'kept'], 'readwrite', { durability: 'strict' }]]);
  expect(await store.load()).toEqual(new Map([['f-1', 'first']]));
  expect(await store.loadKept()).toEqual(new Map([['f-1/a', photo(1)]]));
});

it('says full when the disk is, and closed where nothing can be kept', async () => {
  const store = makeKeepsakeStore(NAME);
  await store.write(NONE, new Map([['f-1/a', photo(1)]]));
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore) {
    Object.defineProperty(this.transaction, 'error', {
      get: () => new DOMException('', 'QuotaExceededError'),
    });
    this.transaction.abort();
    return {} as IDBRequest<IDBValidKey>;
  });
  await expect(store.write(NONE, new Map([['f-1/b', photo(2)]]))).rejects.toMatchObject({
    trouble: 'full',
  });
  vi.restoreAllMocks();
  expect([...(await store.loadKept()).keys()]).toEqual(['f-1/a']);
  vi.stubGlobal('indexedDB', undefined);
  await expect(makeKeepsakeStore(NAME).load()).rejects.toMatchObject({ trouble: 'closed' });
});

it('passes with the page in a rehearsal, and nothing of that is written', async () => {
  const rehearsed = openKeepsakeRows(false);
  await rehearsed.write(
    new Map<string, unknown>([
      ['f-1', 'one'],
      ['f-2', 'two'],
    ]),
    new Map([
      ['f-1/a', photo(1)],
      ['f-10/a', photo(2)],
    ]),
  );
  await rehearsed.write(new Map([['f-2', null]]), NONE);
  expect(await rehearsed.load()).toEqual(new Map([['f-1', 'one']]));
  expect([...(await rehearsed.loadKept('f-1')).keys()]).toEqual(['f-1/a']);
  expect([...(await rehearsed.loadKept()).keys()]).toEqual(['f-1/a', 'f-10/a']);
  const earnest = openKeepsakeRows(true);
  expect([await earnest.load(), await earnest.loadKept()]).toEqual([new Map(), new Map()]);
});
