import type { LogStore, Stop } from '../../machines/ports.ts';
import type { LogRecord } from '../core/records/record.ts';
import { makeDatabase } from './database.ts';

/**
 * The log on the disk: IndexedDB database `name`, store `log`, keyed by seq. A rehearsal uses
 * another name, so that it never mixes with a real kitchen. A promise that resolved means that the
 * rows were flushed (`durability: 'strict'`).
 *
 * Errors: `append` throws when its seqs do not run on by ones from 1 or more; all else is a StoreError.
 */
export function makeLogStore(name = 'loafward'): LogStore & { readonly close: Stop } {
  const database = makeDatabase(name);
  return {
    close: database.close,
    load: () =>
      database.run<unknown[]>('log', 'readonly', (store) => {
        const rows = store.getAll();
        return () => rows.result;
      }),
    async append(records) {
      const first = records[0];
      if (first === undefined) return;
      mustRunOn('append', records, first.seq);
      await database.run('log', 'readwrite', (store, refuse) => {
        if (first.seq > 1) {
          const before = store.getKey(first.seq - 1);
          before.onsuccess = () => {
            if (before.result === undefined) refuse('gone');
          };
        }
        // add, never put: where another page wrote this seq, nothing of ours may replace it.
        for (const record of records) store.add(record, record.seq);
        return () => undefined;
      });
    },
    async rewrite(records) {
      mustRunOn('rewrite', records, records[0]?.seq ?? 1);
      await database.run('log', 'readwrite', (store) => {
        store.clear();
        for (const record of records) store.add(record, record.seq);
        return () => undefined;
      });
    },
  };
}

function mustRunOn(call: string, records: readonly LogRecord[], first: number): void {
  records.forEach(({ seq }, index) => {
    if (seq !== first + index || !(Number.isSafeInteger(seq) && seq >= 1)) {
      throw new Error(`${call}: seq ${seq}, not ${Math.max(first, 1) + index}.`);
    }
  });
}
