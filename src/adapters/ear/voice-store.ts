import type { VoiceRows } from '../../../machines/ear-port.ts';
import type { Stop } from '../../../machines/ports.ts';
import { makeDatabase } from '../database.ts';

/** Known voices on the disk: IndexedDB database `name`-voices, so that all of it goes at once. */
export function makeVoiceStore(name = 'loafward'): VoiceRows & { readonly close: Stop } {
  const database = makeDatabase(`${name}-voices`, ['voices']);
  return {
    close: database.close,
    load: () =>
      database.run('voices', 'readonly', (store) => {
        const [keys, rows] = [store.getAllKeys(), store.getAll() as IDBRequest<unknown[]>];
        return () => new Map(keys.result.map((key, i) => [key as unknown, rows.result[i]]));
      }),
    write: (rows) =>
      database.run('voices', 'readwrite', (store) => {
        for (const [key, row] of rows) {
          if (row === null) store.delete(key);
          else store.put(row, key);
        }
        return () => undefined;
      }),
  };
}
