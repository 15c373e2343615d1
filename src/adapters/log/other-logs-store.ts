import type { OtherLogs, Stop } from '../../../machines/ports.ts';
import { makeDatabase } from '../database.ts';

/** So many digits has a seq in its row's key: the disk gives rows back by their keys, as texts. */
const DIGITS = 12;
const keyOf = (name: string, seq: number): string => `${name}/${String(seq).padStart(DIGITS, '0')}`;
/** '0' is the sign behind '/': every key that begins with this name. */
const rangeOf = (name: string): IDBKeyRange =>
  IDBKeyRange.bound(`${name}/`, `${name}0`, false, true);

/**
 * Logs of other tablets on the disk, a row a fact: IndexedDB database `name`-others beside the kitchen's own,
 * so that no row of theirs is ever taken for one of its log.
 *
 * Errors: all are StoreErrors. A name with a '/' in it would be another's: it is an impossible call.
 */
export function makeOtherLogsStore(name = 'loafward'): OtherLogs & { readonly close: Stop } {
  const database = makeDatabase(`${name}-others`, ['others']);
  return {
    close: database.close,
    load: () =>
      database.run('others', 'readonly', (store) => {
        const [keys, rows] = [store.getAllKeys(), store.getAll() as IDBRequest<unknown[]>];
        return () => {
          const logs = new Map<string, unknown[]>();
          for (const [i, key] of keys.result.entries()) {
            const its = String(key);
            const log = its.slice(0, Math.max(0, its.lastIndexOf('/')));
            const had = logs.get(log);
            if (had) had.push(rows.result[i]);
            else logs.set(log, [rows.result[i]]);
          }
          return logs;
        };
      }),
    write(logs) {
      for (const log of logs.keys())
        if (log === '' || log.includes('/')) throw new Error(`write: no log is named "${log}".`);
      return database.run('others', 'readwrite', (store) => {
        for (const [log, rows] of logs) {
          store.delete(rangeOf(log));
          for (const row of rows ?? []) store.put(row, keyOf(log, row.seq));
        }
        return () => undefined;
      });
    },
  };
}
