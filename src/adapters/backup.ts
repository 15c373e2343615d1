import type { Equipment } from '../core/kitchen/equipment.ts';
import { FILE_VERSION } from '../core/records/log-file.ts';
import type { LogRecord } from '../core/records/record.ts';

/** How long the browser may take to begin the download before its file is let go, ms. */
const LET_GO = 60_000;

/**
 * Hands log and kitchen to the baker as a download, a head and then one record a line of JSON: a copy
 * to keep, or when the disk is full and the bake goes on in memory (read by core/records/read-log-file). Call it inside a tap, or the browser may refuse the download.
 */
export function exportLog(
  records: readonly LogRecord[],
  equipment: Equipment,
  name = 'loafward-log.jsonl',
): void {
  const head = { kitchenFile: FILE_VERSION, equipment };
  const lines = [head, ...records].map((line) => `${JSON.stringify(line)}\n`);
  const url = URL.createObjectURL(new Blob(lines, { type: 'application/jsonl' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), LET_GO);
}
