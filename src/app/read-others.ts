import type { LogRecord } from '../core/records/record.ts';
import type { House } from '../screens/house.ts';

/** The logs of other tablets as they lie on the disk; one that makes no sense is left out and told. */
export function readOthers(
  _rows: ReadonlyMap<string, readonly unknown[]>,
  _tell: House['tell'],
): readonly (readonly LogRecord[])[] {
  return [];
}
