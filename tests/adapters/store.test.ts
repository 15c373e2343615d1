import { forceCloseDatabase, IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { StoreError, type LogStore } from '../../machines/ports.ts';
import { makeLogStore } from '../../src/adapters/store.ts';
import { makeMemoryStore } from '../fakes/memory-store.ts';
import { makeRow } from '../fakes/records.ts';

const NAME = 'loafward-test';
const rows = (...seqs: number[]) => seqs.map((seq) => makeRow(seq));
const troubleOf = (promise: Promise<unknown>) =>
  promise.then(
    () => 'none',
    (error: unknown) => (error instanceof StoreError ? error.trouble : error),
  );

/** The database as another page sees it. */
function openRaw(version?: number): Promise<IDBDatabase> {
  const request = indexedDB.open(NAME, version);
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/** The same, with the stores in place even where the log has not made them yet. */
async function openStores(): Promise<IDBDatabase> {
  await makeLogStore(NAME).load();
  return openRaw();
}

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

describe.each<[string, () => LogStore]>([
  ['on IndexedDB', () => makeLogStore(NAME)],
  ['in memory (the fake)', () => makeMemoryStore()],
])('the log %s', (_name, make) => {
  it('is empty at first, and keeps rows in seq order', async () => {
    const store = make();
    expect(await store.load()).toEqual([]);
    await store.append(rows(1));
    await store.append(rows(2, 3));
    for (let seq = 4; seq <= 12; seq += 1) await store.append(rows(seq));
    expect(await store.load()).toEqual(rows(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12));
  });

  it('takes nothing where nothing is given', async () => {
    const store = make();
    await store.append([]);
    expect(await store.load()).toEqual([]);
  });

  it('refuses a seq that is there, and keeps what stood', async () => {
    const store = make();
    await store.append(rows(1, 2));
    expect(await troubleOf(store.append([makeRow(2, 'another page')]))).toBe('taken');
    expect(await store.load()).toEqual(rows(1, 2));
  });

  it('writes all rows or none', async () => {
    const store = make();
    await store.append(rows(1));
    const other = makeRow(3, 'another page');
    await store.append(rows(2));
    await store.append([other]);
    expect(await troubleOf(store.append([makeRow(3), makeRow(4)]))).toBe('taken');
    expect(await store.load()).toEqual([...rows(1, 2), other]);
  });

  it('says gone when the row before is missing', async () => {
    const store = make();
    expect(await troubleOf(store.append(rows(5, 6)))).toBe('gone');
    expect(await store.load()).toEqual([]);
  });

  it('rewrites the whole log', async () => {
    const store = make();
    await store.append(rows(1, 2, 3));
    const again = [makeRow(1, 'new'), makeRow(2, 'new')];
    await store.rewrite(again);
    expect(await store.load()).toEqual(again);
    await store.append(rows(3));
    expect(await store.load()).toEqual([...again, makeRow(3)]);
  });

  it('keeps copies, not what the caller may change later', async () => {
    const store = make();
    const row = makeRow(1) as { machineVersion: number } & ReturnType<typeof makeRow>;
    await store.append([row]);
    row.machineVersion = 99;
    expect(await store.load()).toEqual(rows(1));
  });
});

describe('the log on IndexedDB', () => {
  it('asks for strict durability at every write, in one transaction each', async () => {
    const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
    const store = makeLogStore(NAME);
    await store.append(rows(1));
    await store.append(rows(2, 3, 4));
    await store.rewrite(rows(1, 2));
    const writes = begun.mock.calls.filter(([, mode]) => mode === 'readwrite');
    expect(writes).toEqual([
      ['log', 'readwrite', { durability: 'strict' }],
      ['log', 'readwrite', { durability: 'strict' }],
      ['log', 'readwrite', { durability: 'strict' }],
    ]);
  });

  it('resolves when the transaction is complete, not when its requests are', async () => {
    const store = makeLogStore(NAME);
    const begin = IDBDatabase.prototype.transaction;
    let complete = false;
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
      this: IDBDatabase,
      ...of
    ) {
      const tx = begin.apply(this, of);
      tx.addEventListener('complete', () => (complete = true));
      return tx;
    });
    await store.append(rows(1));
    expect(complete).toBe(true);
  });

  it.each([
    ['QuotaExceededError', 'full'],
    ['UnknownError', 'closed'],
  ])('says of a request that fails with %s: %s, and leaves nothing', async (name, trouble) => {
    const store = makeLogStore(NAME);
    const raw = await openStores();
    raw.transaction('log', 'readwrite').objectStore('log').add('in the way', 3);
    await store.append(rows(1));
    const add = IDBObjectStore.prototype.add;
    const error = new DOMException('', name);
    vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(function (
      this: IDBObjectStore,
      value,
      key,
    ) {
      const request = add.call(this, value, key);
      // Row 3 fails by itself; here it gives another cause.
      if (key === 3) Object.defineProperty(request, 'error', { get: () => error, set: () => {} });
      return request;
    });
    const caught: unknown = await store.append(rows(2, 3)).catch((e: unknown) => e);
    expect(caught).toMatchObject({ trouble, cause: error });
    expect(await store.load()).toEqual([makeRow(1), 'in the way']);
  });

  it('says full when only the commit finds the disk full', async () => {
    const store = makeLogStore(NAME);
    await store.append(rows(1));
    const add = IDBObjectStore.prototype.add;
    vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(function (
      this: IDBObjectStore,
      value,
      key,
    ) {
      const request = add.call(this, value, key);
      const error = new DOMException('', 'QuotaExceededError');
      Object.defineProperty(this.transaction, 'error', { get: () => error, set: () => {} });
      request.onsuccess = () => this.transaction.abort();
      return request;
    });
    expect(await troubleOf(store.append(rows(2)))).toBe('full');
    vi.restoreAllMocks();
    expect(await store.load()).toEqual(rows(1));
  });

  it('rejects with the cause when the transaction has ended before its work began', async () => {
    const store = makeLogStore(NAME);
    const begin = IDBDatabase.prototype.transaction;
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
      this: IDBDatabase,
      ...of
    ) {
      const tx = begin.apply(this, of);
      tx.abort();
      return tx;
    });
    expect(await troubleOf(store.append(rows(1)))).toBe('closed');
  });

  it('refuses a row that cannot be stored, and writes nothing of the rest', async () => {
    const store = makeLogStore(NAME);
    const bad = { ...makeRow(2), position: () => {} } as unknown as ReturnType<typeof makeRow>;
    expect(await troubleOf(store.append([makeRow(1), bad]))).toBe('closed');
    expect(await store.load()).toEqual([]);
  });

  it('opens again when the browser closed the connection under it', async () => {
    const opened = vi.spyOn(IDBFactory.prototype, 'open');
    const store = makeLogStore(NAME);
    await store.append(rows(1));
    const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
    await store.load();
    forceCloseDatabase(begun.mock.contexts[0] as never);
    await store.append(rows(2));
    expect(await store.load()).toEqual(rows(1, 2));
    expect(opened).toHaveBeenCalledTimes(2);
  });

  it('opens again, once, when it learns of the closing only by asking', async () => {
    const store = makeLogStore(NAME);
    await store.append(rows(1));
    const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
    await store.load();
    (begun.mock.contexts[0] as IDBDatabase).close(); // fires no event
    await store.append(rows(2));
    begun.mockImplementation(() => {
      throw new DOMException('closing', 'InvalidStateError');
    });
    expect(await troubleOf(store.append(rows(3)))).toBe('closed');
    begun.mockRestore();
    expect(await store.load()).toEqual(rows(1, 2));
  });

  it('stands aside when another page deletes the database, then says gone', async () => {
    const store = makeLogStore(NAME);
    await store.append(rows(1, 2));
    const deleted = indexedDB.deleteDatabase(NAME);
    await new Promise((resolve) => (deleted.onsuccess = resolve));
    expect(await troubleOf(store.append(rows(3)))).toBe('gone');
    await store.rewrite(rows(1, 2));
    await store.append(rows(3));
    expect(await store.load()).toEqual(rows(1, 2, 3));
  });

  it('says closed when opening stays blocked, and works once it is free', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    const other = await openRaw(1); // a page that will not let go
    indexedDB.deleteDatabase(NAME);
    const store = makeLogStore(NAME);
    const written = troubleOf(store.append(rows(1)));
    await vi.advanceTimersByTimeAsync(5_000);
    expect(await written).toBe('closed');
    const closed = vi.spyOn(IDBDatabase.prototype, 'close');
    other.close();
    await store.append(rows(1));
    expect(await store.load()).toEqual(rows(1));
    expect(closed).toHaveBeenCalledTimes(2); // the connection that came too late is not kept open
  });

  it('says closed where a newer version of the program has upgraded the database', async () => {
    (await openRaw(2)).close();
    expect(await troubleOf(makeLogStore(NAME).load())).toBe('closed');
  });

  it.each([
    [
      'is forbidden',
      {
        open: () => {
          throw new DOMException('', 'SecurityError');
        },
      },
    ],
    ['is missing', undefined],
  ])('says closed where IndexedDB %s', async (_name, stand) => {
    vi.stubGlobal('indexedDB', stand);
    expect(await troubleOf(makeLogStore(NAME).load())).toBe('closed');
  });

  it('gives a bad row back as it was found', async () => {
    const store = makeLogStore(NAME);
    await store.append(rows(1));
    const raw = await openRaw();
    const tx = raw.transaction('log', 'readwrite');
    tx.objectStore('log').add('not a row', 2);
    tx.objectStore('log').add({ seq: 'three' }, 3);
    await new Promise((resolve) => (tx.oncomplete = resolve));
    expect(await store.load()).toEqual([makeRow(1), 'not a row', { seq: 'three' }]);
  });

  it('keeps kitchens of different names apart', async () => {
    const kitchen = makeLogStore(NAME);
    const rehearsal = makeLogStore(`${NAME}-rehearsal`);
    await rehearsal.append(rows(1, 2));
    expect(await kitchen.load()).toEqual([]);
  });

  it('lets go of the database when closed, and opens it when asked again', async () => {
    const store = makeLogStore(NAME);
    await store.append(rows(1));
    store.close();
    store.close();
    const blocked = vi.fn();
    const upgrade = indexedDB.open(NAME, 1);
    upgrade.onblocked = blocked;
    await new Promise((resolve) => (upgrade.onsuccess = resolve));
    expect(await store.load()).toEqual(rows(1));
    expect(blocked).not.toHaveBeenCalled();
  });

  it.each([
    [[1, 3], 'append: seq 3, not 2.'],
    [[0], 'append: seq 0, not 1.'],
    [[2, 2], 'append: seq 2, not 3.'],
  ])('throws when the seqs are %j', async (seqs, sentence) => {
    await expect(makeLogStore(NAME).append(rows(...seqs))).rejects.toThrow(sentence);
  });
});

describe('the fake', () => {
  it('fails as often as told, leaving nothing, and waits when paused', async () => {
    const store = makeMemoryStore();
    store.fail('full', 2);
    expect(await troubleOf(store.append(rows(1)))).toBe('full');
    expect(await troubleOf(store.append(rows(1)))).toBe('full');
    const go = store.pause();
    const written = store.append(rows(1));
    await Promise.resolve();
    expect(store.rows.size).toBe(0);
    go();
    await written;
    expect(store.rows.size).toBe(1);
    expect(store.writes()).toBe(3);
    store.fail('closed');
    expect(await troubleOf(store.load())).toBe('closed');
  });
});
