import { get, set, type UseStore } from 'idb-keyval';
import type { Settings, Stop } from '../../machines/ports.ts';
import { makeDatabase } from './database.ts';

/**
 * Small settings by name, in the same database as the log. A name never set reads undefined. Errors
 * are StoreErrors. idb-keyval's own createStore cannot ask for durability, so ours stands in.
 */
export function makeSettings(name = 'loafward'): Settings & { readonly close: Stop } {
  const database = makeDatabase(name);
  const useStore: UseStore = (mode, callback) =>
    database.run('settings', mode, (store) => {
      const answer = callback(store);
      // When the transaction fails, run() says why; idb-keyval's own rejection would say null.
      Promise.resolve(answer).catch(() => {});
      return () => answer;
    });
  return {
    close: database.close,
    get: (key) => get<unknown>(key, useStore),
    set: (key, value) => set(key, value, useStore),
  };
}
