import { openFold } from '../../machines/kitchen/open-fold.ts';
import { MACHINE_VERSION, type Machines } from '../../machines/kitchen/kitchen.ts';
import { positionFault, readRecord } from '../core/records/read-record.ts';
import type { LogRecord } from '../core/records/record.ts';
import type { Opened } from './open-log.ts';

/** Reads rows and folds them as far as they are sound. Its reader and its fold come with the first row. */
export function foldLog(rows: readonly unknown[], machines: Machines): Opened {
  const records: LogRecord[] = [];
  for (const [i, row] of rows.entries()) {
    const read = readRecord(row, MACHINE_VERSION);
    // Where the kitchen stood last it may have to be put back to.
    const last = i === rows.length - 1 && read.record !== null ? positionFault(read.record) : null;
    if (read.record === null || last) {
      const reason = read.record === null ? read.reason : last!;
      const { kitchen } = openFold(records, machines);
      const seq = records.length + 1;
      return { records, kitchen, trouble: { kind: 'unreadable', reason, seq } };
    }
    records.push(read.record);
  }
  const { kitchen, trouble } = openFold(records, machines);
  return { records, kitchen, trouble: trouble ? { kind: 'differs', ...trouble } : null };
}
