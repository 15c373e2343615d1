import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { StoreError } from '../../../machines/ports.ts';
import { makePictureStore } from '../../../src/adapters/pictures/picture-store.ts';
import { makeSettings } from '../../../src/adapters/settings.ts';
import { makeLogStore } from '../../../src/adapters/store.ts';
import { jpeg } from '../../fakes/memory-pictures.ts';
import { makeRow } from '../../fakes/records.ts';

const NAME = 'loafward-test';

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

it('keeps pictures by formula, with what may be taken back, and lets go of them', async () => {
  const store = makePictureStore(NAME);
  expect(await store.load()).toEqual(new Map());
  await store.write(
    new Map([
      ['lane-wheat', { now: jpeg(1) }],
      ['olive-seed', { now: jpeg(2), before: null }],
      ['harbour-rye', { now: null, before: jpeg(3) }],
    ]),
  );
  store.close();
  const again = makePictureStore(NAME);
  expect(await again.load()).toEqual(
    new Map([
      ['harbour-rye', { now: null, before: jpeg(3) }],
      ['lane-wheat', { now: jpeg(1) }],
      ['olive-seed', { now: jpeg(2), before: null }],
    ]),
  );
  await again.write(
    new Map([
      ['lane-wheat', { now: jpeg(4), before: jpeg(1) }],
      ['olive-seed', null],
    ]),
  );
  expect([...(await again.load()).keys()]).toEqual(['harbour-rye', 'lane-wheat']);
});

it('lies beside a log of any age: nothing of it is upgraded, and an older program opens it still', async () => {
  const log = makeLogStore(NAME);
  await log.append([makeRow(1)]);
  await makeSettings(NAME).set('theme', 'dark');
  await makePictureStore(NAME).write(new Map([['lane-wheat', { now: jpeg(1) }]]));
  const databases = await indexedDB.databases();
  expect(databases).toEqual(
    expect.arrayContaining([
      { name: NAME, version: 1 },
      { name: `${NAME}-pictures`, version: 1 },
    ]),
  );
  expect(await makeLogStore(NAME).load()).toEqual([makeRow(1)]);
  expect(await makeSettings(NAME).get('theme')).toBe('dark');
});

it('writes durably, all or none, and says full when the disk is', async () => {
  const store = makePictureStore(NAME);
  await store.write(new Map([['lane-wheat', { now: jpeg(1) }]]));
  const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
  const put = IDBObjectStore.prototype.put;
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
    this: IDBObjectStore,
    value,
    key,
  ) {
    const request = put.call(this, value, key);
    if (key !== 'olive-seed') return request;
    Object.defineProperty(this.transaction, 'error', {
      get: () => new DOMException('', 'QuotaExceededError'),
    });
    this.transaction.abort();
    return request;
  });
  const error: unknown = await store
    .write(
      new Map([
        ['lane-wheat', { now: jpeg(9) }],
        ['olive-seed', { now: jpeg(2) }],
      ]),
    )
    .catch((caught: unknown) => caught);
  expect(error).toBeInstanceOf(StoreError);
  expect((error as StoreError).trouble).toBe('full');
  expect(begun.mock.calls).toEqual([['pictures', 'readwrite', { durability: 'strict' }]]);
  vi.restoreAllMocks();
  expect(await store.load()).toEqual(new Map([['lane-wheat', { now: jpeg(1) }]]));
});

it('takes what is no picture there for none', async () => {
  const store = makePictureStore(NAME);
  const odd = new Map<string, never>([
    ['words', 'bread' as never],
    ['nothing', undefined as never],
    ['number', { now: 7 } as never],
    ['half', { now: jpeg(1), before: 'bread' } as never],
  ]);
  await store.write(odd);
  expect(await store.load()).toEqual(new Map([['half', { now: jpeg(1) }]]));
});

it('says closed where nothing can be kept', async () => {
  vi.stubGlobal('indexedDB', undefined);
  await expect(makePictureStore(NAME).load()).rejects.toMatchObject({ trouble: 'closed' });
});
