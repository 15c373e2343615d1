import type { KeepsakeRows, Stop } from '../../../machines/ports.ts';
import { makeDatabase } from '../database.ts';

const rowsIn = (
  store: IDBObjectStore,
  range?: IDBKeyRange,
): (() => ReadonlyMap<unknown, unknown>) => {
  const [keys, rows] = [store.getAllKeys(range), store.getAll(range) as IDBRequest<unknown[]>];
  return () => new Map(keys.result.map((key, i) => [key as unknown, rows.result[i]]));
};

const put = (store: IDBObjectStore, rows: ReadonlyMap<string, unknown>): void => {
  for (const [key, row] of rows) {
    if (row === null) store.delete(key);
    else store.put(row, key);
  }
};

/**
 * What is said and kept of bakes on the disk: IndexedDB database `name`-keepsakes beside the log's, for
 * photos and voices may be erased and a log's rows may not. What is said lies apart from what is kept: the
 * list of bakes reads it whole, and no photo for it.
 */
export function makeKeepsakeStore(name = 'loafward'): KeepsakeRows & { readonly close: Stop } {
  const database = makeDatabase(`${name}-keepsakes`, ['said', 'kept']);
  return {
    close: database.close,
    load: () => database.run('said', 'readonly', (store) => rowsIn(store)),
    loadKept: (start) =>
      database.run('kept', 'readonly', (store) =>
        // '0' is the sign behind '/': every key that begins with this start.
        rowsIn(
          store,
          start === undefined
            ? undefined
            : IDBKeyRange.bound(`${start}/`, `${start}0`, false, true),
        ),
      ),
    write: (said, kept) =>
      database.run(['said', 'kept'], 'readwrite', (store) => {
        put(store, said);
        put(store.transaction.objectStore('kept'), kept);
        return () => undefined;
      }),
  };
}
