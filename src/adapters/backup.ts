import type { LogRecord } from '../core/records/record.ts';

/** How long the browser may take to begin the download before its file is let go, ms. */
const LET_GO = 60_000;

/**
 * Hands the log to the baker as a download, one record a line of JSON: for when the disk is full and
 * the bake goes on in memory. Call it inside a tap, or the browser may refuse the download.
 */
export function exportLog(records: readonly LogRecord[], name = 'loafward-log.jsonl'): void {
  const lines = records.map((record) => `${JSON.stringify(record)}\n`);
  const url = URL.createObjectURL(new Blob(lines, { type: 'application/jsonl' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), LET_GO);
}
