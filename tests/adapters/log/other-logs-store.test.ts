import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { StoreError } from '../../../machines/ports.ts';
import { openOtherLogs } from '../../../src/adapters/log/open-other-logs.ts';
import { makeOtherLogsStore } from '../../../src/adapters/log/other-logs-store.ts';
import { makeRow } from '../../fakes/records.ts';

const NAME = 'loafward-test';
const rows = (count: number) => Array.from({ length: count }, (_, i) => makeRow(i + 1));

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

it('keeps each log by itself in the order of its rows, and lets go of it', async () => {
  const store = makeOtherLogsStore(NAME);
  expect(await store.load()).toEqual(new Map());
  // Eleven: as texts "10" would come before "2".
  await store.write(
    new Map([
      ['a', rows(11)],
      ['ab', rows(1)],
    ]),
  );
  store.close();
  const again = makeOtherLogsStore(NAME);
  expect(await again.load()).toEqual(
    new Map([
      ['a', rows(11)],
      ['ab', rows(1)],
    ]),
  );
  await again.write(
    new Map([
      ['a', rows(2)],
      ['ab', null],
      ['c', rows(3)],
    ]),
  );
  expect(await again.load()).toEqual(
    new Map([
      ['a', rows(2)],
      ['c', rows(3)],
    ]),
  );
  expect(await indexedDB.databases()).toEqual([{ name: `${NAME}-others`, version: 1 }]);
});

it('writes all logs in one strictly durable transaction, or none', async () => {
  const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
  const store = makeOtherLogsStore(NAME);
  await store.write(new Map([['a', rows(2)]]));
  expect(begun).toHaveBeenLastCalledWith('others', 'readwrite', { durability: 'strict' });
  const bad = { ...makeRow(1), odd: () => 0 };
  await expect(
    store.write(
      new Map([
        ['a', null],
        ['b', [bad]],
      ]),
    ),
  ).rejects.toBeInstanceOf(StoreError);
  expect(await store.load()).toEqual(new Map([['a', rows(2)]]));
});

it('tells a full disk, and one that cannot be opened', async () => {
  const store = makeOtherLogsStore(NAME);
  await store.load();
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('', 'QuotaExceededError');
  });
  await expect(store.write(new Map([['a', rows(1)]]))).rejects.toMatchObject({ trouble: 'full' });
  vi.stubGlobal('indexedDB', undefined);
  await expect(makeOtherLogsStore(NAME).load()).rejects.toMatchObject({ trouble: 'closed' });
});

it('takes no name that would reach into another log', () => {
  expect(() => makeOtherLogsStore(NAME).write(new Map([['a/b', rows(1)]]))).toThrow('"a/b"');
});

it('is empty in a rehearsal, and nothing of that is written', async () => {
  const passing = openOtherLogs(false);
  await passing.write(new Map([['a', rows(1)]]));
  expect(await passing.load()).toEqual(new Map());
  expect(await indexedDB.databases()).toEqual([]);
});
