import type { Change } from '../circle/row.ts';
import { kindOf } from '../circle/saved-circle.ts';
import type { Equipment } from '../kitchen/equipment.ts';
import { readEquipment } from '../kitchen/read-equipment.ts';
import type { SavedKeepsakes } from '../log/saved-keepsakes.ts';
import { isPictureLine, type SavedPicture } from '../pictures/saved-picture.ts';
import {
  BadLine,
  parseLine,
  readCircleLines,
  readPictures,
  readRecords,
  refuseLine,
  type InLine,
} from './file-lines.ts';
import { bodyAt, CIRCLE_VERSION, FILE_VERSION, SEALED_VERSION } from './log-file.ts';
import { readSealedFile } from './read-sealed-file.ts';
import type { LogRecord } from './record.ts';

/** All that a file holds. */
export interface SavedFile {
  readonly records: readonly LogRecord[];
  /** Logs of other tablets that stood beside it. */
  readonly others: readonly (readonly LogRecord[])[];
  /** Null: a bare log. */
  readonly equipment: Equipment | null;
  readonly pictures: readonly SavedPicture[];
  /** Null: it holds none. */
  readonly circle: Change | null;
  readonly keepsakes: SavedKeepsakes;
}

export type ReadLogFile =
  | { readonly file: SavedFile; readonly reason: null }
  | { readonly file: null; readonly reason: InLine };

const NONE: SavedKeepsakes = { said: new Map(), kept: [], gone: new Set() };

interface OldHead {
  readonly kitchenFile: unknown;
  readonly equipment?: unknown;
  readonly circle?: unknown;
}

const isHead = (value: unknown): value is OldHead =>
  typeof value === 'object' && value !== null && 'kitchenFile' in value;

/**
 * A file of before the sum: a head with what the kitchen bakes with, then its formulas' pictures, then so many
 * lines of the circle as the head says, then the records. One without a head is a bare log.
 *
 * @throws BadLine
 */
function readOldFile(text: string, head: OldHead | null, newest: number): SavedFile {
  const lines = text.split('\n').map((line) => line.trim());
  while (lines.at(-1) === '') lines.pop();
  const rest = { others: [], keepsakes: NONE };
  if (head === null) {
    if (lines.length === 0) return refuseLine(1, 'file', 'a log', 'nothing');
    const records = readRecords({ lines, at: 0 }, newest);
    return { records, equipment: null, pictures: [], circle: null, ...rest };
  }
  const { equipment, reason } = { reason: null, ...readEquipment(head.equipment) };
  if (equipment === null)
    return refuseLine(1, `equipment.${reason!.path}`, reason!.expected, reason!.got);
  let at = 1;
  while (at < lines.length && isPictureLine(parseLine(lines[at]!))) at += 1;
  const pictures = readPictures({ lines: lines.slice(1, at), at: 1 });
  let circle: Change | null = null;
  if ((head.kitchenFile as number) >= CIRCLE_VERSION) {
    const count = head.circle;
    if (!(typeof count === 'number' && Number.isInteger(count) && count > 0))
      return refuseLine(1, 'circle', 'how many rows of the circle follow', kindOf(count));
    circle = readCircleLines({ lines: lines.slice(at, at + count), at });
    if (lines.length < at + count)
      return refuseLine(lines.length, 'circle', `${count} rows of it`, String(lines.length - at));
    at += count;
  }
  const records = readRecords({ lines: lines.slice(at), at }, newest);
  return { records, equipment, pictures, circle, ...rest };
}

/**
 * A saved file (core/records/log-file.ts), or one that an older program saved. All of it or nothing: the first
 * line that cannot be read, or that a newer version wrote, is named with its number, counted from 1. One that
 * was cut is named by `cut`, one that was changed by `sum`. Never throws.
 *
 * @param newest the machine version of this program
 * @param sum SHA-256 of what stands from `bodyAt` on (FIPS 180-4), 64 small hexadecimal digits
 */
export function readLogFile(text: string, newest: number, sum: string): ReadLogFile {
  try {
    const first = parseLine(text.slice(0, bodyAt(text)).trim());
    const head = isHead(first) ? first : null;
    if (head === null) return { file: readOldFile(text, null, newest), reason: null };
    const version = head.kitchenFile;
    if (!Number.isInteger(version) || (version as number) > FILE_VERSION)
      refuseLine(1, 'kitchenFile', `at most ${FILE_VERSION}`, version);
    const file =
      version === SEALED_VERSION
        ? readSealedFile(text, newest, sum)
        : readOldFile(text, head, newest);
    return { file, reason: null };
  } catch (error) {
    if (!(error instanceof BadLine)) throw error;
    return { file: null, reason: error.reason };
  }
}
