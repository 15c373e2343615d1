import type { KeptPicture } from '../../machines/ports.ts';
import type { Equipment } from '../core/kitchen/equipment.ts';
import type { SavedRow } from '../core/circle/saved-circle.ts';
import { versionOf } from '../core/records/log-file.ts';
import type { LogRecord } from '../core/records/record.ts';
import { toSaved } from './pictures/saved.ts';

/** How long the browser may take to begin the download before its file is let go, ms. */
const LET_GO = 60_000;

/**
 * Hands log, kitchen, pictures and the circle to the baker as a download, one a line of JSON, a head first: a copy to
 * keep, or when the disk is full and the bake goes on in memory (read by core/records/read-log-file).
 * Call it inside a tap, or the browser may refuse the download.
 */
export function exportLog(
  records: readonly LogRecord[],
  equipment: Equipment,
  pictures: ReadonlyMap<string, KeptPicture> = new Map(),
  circle: readonly SavedRow[] = [],
  name = 'loafward-log.jsonl',
): void {
  const saved = toSaved(pictures);
  const head = {
    kitchenFile: versionOf(saved.length, circle.length),
    equipment,
    ...(circle.length > 0 ? { circle: circle.length } : {}),
  };
  const lines = [head, ...saved, ...circle, ...records].map((line) => `${JSON.stringify(line)}\n`);
  const url = URL.createObjectURL(new Blob(lines, { type: 'application/jsonl' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), LET_GO);
}
