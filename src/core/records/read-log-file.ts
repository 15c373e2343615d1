import type { Change } from '../circle/row.ts';
import { kindOf, readSavedCircle } from '../circle/saved-circle.ts';
import { readEquipment } from '../kitchen/read-equipment.ts';
import type { Equipment } from '../kitchen/equipment.ts';
import { isPictureLine, readSavedPicture, type SavedPicture } from '../pictures/saved-picture.ts';
import { CIRCLE_VERSION, FILE_VERSION } from './log-file.ts';
import { readRecord, type Unreadable } from './read-record.ts';
import type { LogRecord } from './record.ts';

export type ReadLogFile =
  | {
      readonly records: readonly LogRecord[];
      readonly equipment: Equipment | null;
      readonly pictures: readonly SavedPicture[];
      /** Null: it holds none. */
      readonly circle: Change | null;
      readonly reason?: never;
    }
  | { readonly records: null; readonly reason: Unreadable & { readonly line: number } };

const parse = (line: string): unknown => {
  try {
    return JSON.parse(line) as unknown;
  } catch {
    return undefined;
  }
};

const isHead = (
  value: unknown,
): value is {
  readonly kitchenFile: unknown;
  readonly equipment?: unknown;
  readonly circle?: unknown;
} => typeof value === 'object' && value !== null && 'kitchenFile' in value;

/**
 * A saved log, one JSON value a line: a head with what the kitchen bakes with, then its formulas'
 * pictures, then so many lines of the circle as the head says, then the records, their seq running on by ones from 1. All of it or nothing: the first line that is no record, or
 * that a newer version wrote, is named with its number, counted from 1. Never throws.
 *
 * @param newest the machine version of this program
 */
export function readLogFile(text: string, newest: number): ReadLogFile {
  const lines = text.split('\n').map((line) => line.trim());
  while (lines.at(-1) === '') lines.pop();
  const refuse = (line: number, path: string, expected: string, got: unknown): ReadLogFile => ({
    records: null,
    reason: { line, path, expected, got: String(got).slice(0, 60) },
  });
  const head = parse(lines[0] ?? '');
  let equipment: Equipment | null = null;
  if (isHead(head)) {
    if (!Number.isInteger(head.kitchenFile) || (head.kitchenFile as number) > FILE_VERSION) {
      return refuse(1, 'kitchenFile', `at most ${FILE_VERSION}`, head.kitchenFile);
    }
    const read = readEquipment(head.equipment);
    if (read.equipment === null) {
      return refuse(1, `equipment.${read.reason.path}`, read.reason.expected, read.reason.got);
    }
    equipment = read.equipment;
  }
  let first = equipment === null ? 0 : 1;
  const pictures = new Map<string, SavedPicture>();
  for (const line of equipment === null ? [] : lines.slice(1)) {
    const row = parse(line);
    if (!isPictureLine(row)) break;
    first += 1;
    const { saved, reason } = readSavedPicture(row);
    if (saved === null) return { records: null, reason: { line: first, ...reason } };
    if (pictures.has(saved.picture))
      return refuse(first, 'picture', 'a formula of its own', saved.picture);
    pictures.set(saved.picture, saved);
  }
  let circle: Change | null = null;
  if (isHead(head) && (head.kitchenFile as number) >= CIRCLE_VERSION) {
    const count = head.circle;
    if (!(typeof count === 'number' && Number.isInteger(count) && count > 0))
      return refuse(1, 'circle', 'how many rows of the circle follow', kindOf(count));
    const { saved, reason } = readSavedCircle(lines.slice(first, first + count).map(parse));
    if (reason !== null) {
      const { path, expected, got } = reason;
      return refuse(first + reason.at + 1, path, expected, got);
    }
    if (lines.length < first + count)
      return refuse(lines.length, 'circle', `${count} rows of it`, String(lines.length - first));
    circle = saved;
    first += count;
  }
  const records: LogRecord[] = [];
  const ids = new Set<string>();
  for (const [i, line] of lines.slice(first).entries()) {
    const at = first + i + 1;
    const { record, reason } = { reason: null, ...readRecord(parse(line), newest) };
    if (record === null) return { records: null, reason: { line: at, ...reason! } };
    if (record.seq !== i + 1) return refuse(at, 'seq', String(i + 1), record.seq);
    if (ids.has(record.fact.id)) return refuse(at, 'fact.id', 'an id of its own', record.fact.id);
    ids.add(record.fact.id);
    records.push(record);
  }
  if (records.length === 0 && equipment === null) return refuse(1, 'file', 'a log', 'nothing');
  return { records, equipment, pictures: [...pictures.values()], circle };
}

/** Whether a file's log goes on from this one: each of these facts stands in its place there. */
export const goesOn = (here: readonly LogRecord[], file: readonly LogRecord[]): boolean =>
  here.every(({ fact }, i) => file[i]?.fact.id === fact.id);
