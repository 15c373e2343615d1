import { emptyKitchen, type Kitchen, type Machines } from '../../machines/kitchen/kitchen.ts';
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
  // Reader and fold come with the first row: an empty kitchen is shown without them.
  if (rows.length === 0) return { records: [], kitchen: emptyKitchen(machines), trouble: null };
  return (await import('./fold-log.ts')).foldLog(rows, machines);
}
