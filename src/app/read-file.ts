import { MACHINE_VERSION, MACHINES } from '../../machines/kitchen/kitchen.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import { goesOn, readLogFile } from '../core/records/read-log-file.ts';
import type { LogRecord } from '../core/records/record.ts';
import { readAFile } from '../core/speech/en/read-a-file.ts';
import { fill } from '../core/speech/fill.ts';
import type { FileRead } from '../screens/house.ts';

/**
 * A saved log held against this kitchen's: taken whole, into an empty kitchen or where it goes on
 * from what stands here; else the sentence why not. Nothing is written.
 */
export function readFile(text: string, here: readonly LogRecord[]): FileRead {
  const no = (why: string): FileRead => ({ file: null, why });
  const { records, equipment, pictures, circle, reason } = {
    ...{ equipment: null, pictures: [], circle: null, reason: null },
    ...readLogFile(text, MACHINE_VERSION),
  };
  if (records === null) {
    const { path } = reason!;
    return path === 'machineVersion' || path === 'kitchenFile'
      ? no(fill(readAFile.newer, { line: reason!.line }))
      : no(fill(readAFile.unreadable, { ...reason!, path: path || 'row' }));
  }
  if (!goesOn(here, records)) return no(readAFile.another);
  const { trouble } = replay(records, MACHINES);
  if (trouble !== null) return no(fill(readAFile.differs, { seq: trouble.seq }));
  const bakes = records.filter(({ fact }) => fact.kind === 'start').length;
  const last = records.at(-1)?.fact.at ?? null;
  return { file: { records, equipment, pictures, circle, bakes, last }, why: null };
}
