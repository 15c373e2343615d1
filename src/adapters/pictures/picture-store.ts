import type { Jpeg, KeptPicture, Pictures, Stop } from '../../../machines/ports.ts';
import { makeDatabase } from '../database.ts';

/** Of whatever realm it comes. */
const isBytes = (found: unknown): found is Jpeg =>
  Object.prototype.toString.call(found) === '[object Uint8Array]';

const read = (row: unknown): KeptPicture | null => {
  const { now, before } = (row ?? {}) as { now?: unknown; before?: unknown };
  if (now !== null && !isBytes(now)) return null;
  return isBytes(before) || before === null ? { now, before } : { now };
};

/**
 * Pictures on the disk, by their formula's id: IndexedDB database `name`-pictures beside the log's. A store
 * in the log's own would be a new version of it, which a page with an older program could not open. What
 * cannot be read there is no picture.
 */
export function makePictureStore(
  name = 'loafward',
): Pick<Pictures, 'load' | 'write'> & { readonly close: Stop } {
  const database = makeDatabase(`${name}-pictures`, ['pictures']);
  return {
    close: database.close,
    load: () =>
      database.run('pictures', 'readonly', (store) => {
        const [ids, rows] = [store.getAllKeys(), store.getAll() as IDBRequest<unknown[]>];
        return () =>
          new Map(
            ids.result.flatMap((id, i) => {
              const row = read(rows.result[i]);
              return typeof id === 'string' && row !== null ? [[id, row] as const] : [];
            }),
          );
      }),
    write: (rows) =>
      database.run('pictures', 'readwrite', (store) => {
        for (const [id, row] of rows) {
          if (row === null) store.delete(id);
          else store.put(row, id);
        }
        return () => undefined;
      }),
  };
}
