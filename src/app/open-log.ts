import { replay } from '../../machines/kitchen/replay.ts';
import {
  emptyKitchen,
  MACHINE_VERSION,
  type Kitchen,
  type Machines,
} from '../../machines/kitchen/kitchen.ts';
import type { LogStore } from '../../machines/ports.ts';
import type { Unreadable } from '../core/records/read-record.ts';
import type { Position } from '../core/records/position.ts';
import type { LogRecord } from '../core/records/record.ts';

/** What was found in the store, folded as far as it goes. */
export interface Opened {
  readonly records: readonly LogRecord[];
  readonly kitchen: Kitchen;
  /**
   * `closed`: no store. `unreadable`: a row that is no record, or a newer version's. `differs`: the
   * machines do not come to where the log says it stood; `last` is the last stored position.
   */
  readonly trouble:
    | null
    | { readonly kind: 'closed' }
    | { readonly kind: 'unreadable'; readonly reason: Unreadable; readonly seq: number }
    | { readonly kind: 'differs'; readonly seq: number; readonly last: Position };
}

/** Reads and folds a log. Never throws: what goes wrong is in `trouble`, what was sound is kept. */
export async function openLog(store: LogStore, machines: Machines): Promise<Opened> {
  let rows: readonly unknown[];
  try {
    rows = await store.load();
  } catch {
    return { records: [], kitchen: emptyKitchen(machines), trouble: { kind: 'closed' } };
  }
  const records: LogRecord[] = [];
  // The reader comes with the first row: an empty kitchen is shown without it.
  if (rows.length === 0) return { records, kitchen: emptyKitchen(machines), trouble: null };
  const { readRecord } = await import('../core/records/read-record.ts');
  for (const row of rows) {
    const read = readRecord(row, MACHINE_VERSION);
    if (read.record === null) {
      const { kitchen } = replay(records, machines);
      const seq = records.length + 1;
      return { records, kitchen, trouble: { kind: 'unreadable', reason: read.reason, seq } };
    }
    records.push(read.record);
  }
  const { kitchen, trouble } = replay(records, machines);
  return { records, kitchen, trouble: trouble ? { kind: 'differs', ...trouble } : null };
}
