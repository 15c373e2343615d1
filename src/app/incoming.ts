import type { OtherLogs } from '../../machines/ports.ts';
import { mergeLogs, type Log, type Merged } from '../core/records/merge-logs.ts';
import type { SavedFile } from '../core/records/read-log-file.ts';
import type { Comes } from '../screens/house.ts';
import { readOtherLogs } from './read-others.ts';

/** A saved file's logs held against those that are here. */
export interface Incoming {
  readonly merged: Merged;
  readonly comes: Comes;
  /** As they lie on the disk, by their names. */
  readonly rows: ReadonlyMap<string, readonly unknown[]>;
  /** Those of them that can be read. */
  readonly named: ReadonlyMap<string, Log>;
}

const comesOf = (here: Log, merged: Merged): Comes => {
  if (merged.logs === null) return 'already';
  if (merged.goesOn) return here.length === 0 ? 'all' : 'goesOn';
  return merged.fresh.length === 0 ? 'already' : 'beside';
};

/** Rejects with `closed`. */
export async function incoming(
  { records, others }: Pick<SavedFile, 'records' | 'others'>,
  here: Log,
  otherLogs: OtherLogs,
): Promise<Incoming> {
  const rows = await otherLogs.load();
  const { logs: named } = readOtherLogs(rows);
  const logs = { own: here, others: [...named.values()] };
  const merged = mergeLogs(logs, { own: records, others });
  return { merged, comes: comesOf(here, merged), rows, named };
}
