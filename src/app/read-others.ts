import { MACHINE_VERSION } from '../../machines/kitchen/kitchen.ts';
import type { Log } from '../core/records/merge-logs.ts';
import { readRecord, type Unreadable } from '../core/records/read-record.ts';
import { readAFile } from '../core/speech/words/read-a-file.ts';
import { fill } from '../core/speech/fill.ts';
import type { House } from '../screens/house.ts';

/** A log off the disk: all of it or nothing. */
function readLog(
  rows: readonly unknown[],
):
  | { readonly log: Log; readonly reason: null }
  | { readonly log: null; readonly reason: Unreadable & { readonly seq: number } } {
  const log = [];
  for (const [i, row] of rows.entries()) {
    const { record, reason } = { reason: null, ...readRecord(row, MACHINE_VERSION) };
    if (record === null) return { log: null, reason: { ...reason!, seq: i + 1 } };
    if (record.seq !== i + 1) {
      const [expected, got] = [String(i + 1), String(record.seq)];
      return { log: null, reason: { path: 'seq', expected, got, seq: i + 1 } };
    }
    log.push(record);
  }
  return { log, reason: null };
}

/** The logs of other tablets as they lie on the disk, by their names, and those that make no sense. */
export function readOtherLogs(rows: ReadonlyMap<string, readonly unknown[]>): {
  readonly logs: ReadonlyMap<string, Log>;
  readonly misread: readonly (Unreadable & { readonly seq: number })[];
} {
  const logs = new Map<string, Log>();
  const misread = [];
  for (const [name, its] of rows) {
    const { log, reason } = readLog(its);
    if (reason === null) logs.set(name, log);
    else misread.push(reason);
  }
  return { logs, misread };
}

/** The logs of other tablets; one that makes no sense is left out and told. */
export function readOthers(
  rows: ReadonlyMap<string, readonly unknown[]>,
  tell: House['tell'],
): readonly Log[] {
  const { logs, misread } = readOtherLogs(rows);
  const [first] = misread;
  if (first) {
    const text = fill(readAFile.otherLeftOut, { ...first, path: first.path || 'row' });
    tell({ id: 'others', text, action: null });
  }
  return [...logs.values()];
}
