import type { Stop } from '../../machines/ports.ts';
import { makeDatabase, type StoreName } from './database.ts';

/** Rows by their keys, as found: unread, unchecked. */
export interface Rows {
  /** Rejects with `closed`. */
  load(): Promise<ReadonlyMap<unknown, unknown>>;
  /** All of these in one durable transaction; null: no row any more. Rejects with a StoreError: none is written. */
  write(rows: ReadonlyMap<string, unknown>): Promise<void>;
}

/** Rows of one store, in a database of its own. */
export function makeRowStore(name: string, store: StoreName): Rows & { readonly close: Stop } {
  const database = makeDatabase(name, [store]);
  return {
    close: database.close,
    load: () =>
      database.run(store, 'readonly', (its) => {
        const [keys, rows] = [its.getAllKeys(), its.getAll() as IDBRequest<unknown[]>];
        return () => new Map(keys.result.map((key, i) => [key as unknown, rows.result[i]]));
      }),
    write: (rows) =>
      database.run(store, 'readwrite', (its) => {
        for (const [key, row] of rows) {
          if (row === null) its.delete(key);
          else its.put(row, key);
        }
        return () => undefined;
      }),
  };
}

/** Rows that last as long as the page. */
export function makePassingRows(): Rows {
  const kept = new Map<string, unknown>();
  return {
    load: () => Promise.resolve(new Map(kept)),
    write(rows) {
      for (const [key, row] of rows) {
        if (row === null) kept.delete(key);
        else kept.set(key, row);
      }
      return Promise.resolve();
    },
  };
}
