import { openFold } from '../../machines/kitchen/open-fold.ts';
import { MACHINE_VERSION, type Machines } from '../../machines/kitchen/kitchen.ts';
import { readRecord } from '../core/records/read-record.ts';
import type { LogRecord } from '../core/records/record.ts';
import type { Opened } from './open-log.ts';

/** Reads rows and folds them as far as they are sound. Its reader and its fold come with the first row. */
export function foldLog(rows: readonly unknown[], machines: Machines): Opened {
  const records: LogRecord[] = [];
  for (const row of rows) {
    const read = readRecord(row, MACHINE_VERSION);
    if (read.record === null) {
      const { kitchen } = openFold(records, machines);
      const seq = records.length + 1;
      return { records, kitchen, trouble: { kind: 'unreadable', reason: read.reason, seq } };
    }
    records.push(read.record);
  }
  const { kitchen, trouble } = openFold(records, machines);
  return { records, kitchen, trouble: trouble ? { kind: 'differs', ...trouble } : null };
}
