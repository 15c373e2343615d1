import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { StoreError, type Settings } from '../../machines/ports.ts';
import { makeSettings } from '../../src/adapters/settings.ts';
import { makeLogStore } from '../../src/adapters/store.ts';
import { makeMemorySettings } from '../fakes/memory-settings.ts';
import { makeRow } from '../fakes/records.ts';

const NAME = 'loafward-test';

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

describe.each<[string, () => Settings]>([
  ['on IndexedDB', () => makeSettings(NAME)],
  ['in memory (the fake)', () => makeMemorySettings()],
])('settings %s', (_name, make) => {
  it('read undefined until set, then what was last set', async () => {
    const settings = make();
    expect(await settings.get('hands')).toBeUndefined();
    await settings.set('hands', 'left');
    await settings.set('hands', 'right');
    await settings.set('kitchen', { celsius: 23.5, at: 7 });
    expect(await settings.get('hands')).toBe('right');
    expect(await settings.get('kitchen')).toEqual({ celsius: 23.5, at: 7 });
  });
});

describe('settings on IndexedDB', () => {
  it('are written with strict durability', async () => {
    const settings = makeSettings(NAME);
    await settings.get('theme');
    const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
    await settings.set('theme', 'dark');
    expect(begun.mock.calls).toEqual([['settings', 'readwrite', { durability: 'strict' }]]);
  });

  it('live beside the log and outlast the page', async () => {
    const log = makeLogStore(NAME);
    await log.append([makeRow(1)]);
    const settings = makeSettings(NAME);
    await settings.set('theme', 'dark');
    settings.close();
    expect(await makeSettings(NAME).get('theme')).toBe('dark');
    expect(await log.load()).toEqual([makeRow(1)]);
  });

  it('say full when the disk is, and leave the old value', async () => {
    const settings = makeSettings(NAME);
    await settings.set('theme', 'light');
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      value,
      key,
    ) {
      const request = put.call(this, value, key);
      Object.defineProperty(this.transaction, 'error', {
        get: () => new DOMException('', 'QuotaExceededError'),
      });
      this.transaction.abort();
      return request;
    });
    const error: unknown = await settings.set('theme', 'dark').catch((caught: unknown) => caught);
    expect(error).toBeInstanceOf(StoreError);
    expect((error as StoreError).trouble).toBe('full');
    vi.restoreAllMocks();
    expect(await settings.get('theme')).toBe('light');
  });

  it('refuse a value that cannot be stored', async () => {
    const settings = makeSettings(NAME);
    await expect(settings.set('odd', () => {})).rejects.toThrow(StoreError);
    expect(await settings.get('odd')).toBeUndefined();
  });
});
