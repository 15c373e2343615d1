import type { CircleRows, Stop } from '../../../machines/ports.ts';
import { makeDatabase } from '../database.ts';

/**
 * The circle on the disk, a row a thing: IndexedDB database `name`-circle beside the log's. Names may be
 * erased, a log's rows may not; and a store in the log's own database would be a new version of it, which a
 * page with an older program could not open.
 */
export function makeCircleStore(name = 'loafward'): CircleRows & { readonly close: Stop } {
  const database = makeDatabase(`${name}-circle`, ['circle']);
  return {
    close: database.close,
    load: () =>
      database.run('circle', 'readonly', (store) => {
        const [keys, rows] = [store.getAllKeys(), store.getAll() as IDBRequest<unknown[]>];
        return () => new Map(keys.result.map((key, i) => [key as unknown, rows.result[i]]));
      }),
    write: (rows) =>
      database.run('circle', 'readwrite', (store) => {
        for (const [key, row] of rows) {
          if (row === null) store.delete(key);
          else store.put(row, key);
        }
        return () => undefined;
      }),
  };
}
