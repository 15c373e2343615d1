import { describe } from '../formula/read-fields.ts';
import { kindOf, readSavedCircle } from '../circle/saved-circle.ts';
import type { Change } from '../circle/row.ts';
import { readSavedKeepsakes, type SavedKeepsakes } from '../log/saved-keepsakes.ts';
import { isPictureLine, readSavedPicture, type SavedPicture } from '../pictures/saved-picture.ts';
import { positionFault, readRecord, type Unreadable } from './read-record.ts';
import type { LogRecord } from './record.ts';

/** Where a file cannot be read, its lines counted from 1. */
export type InLine = Unreadable & { readonly line: number };

/** Thrown inside the readers of a file only, and caught by them. */
export class BadLine extends Error {
  constructor(readonly reason: InLine) {
    super(`Line ${reason.line}, ${reason.path}: expected ${reason.expected}, got ${reason.got}.`);
  }
}

/** @throws BadLine */
export function refuseLine(line: number, path: string, expected: string, got: unknown): never {
  const told = typeof got === 'object' ? describe(got) : String(got);
  throw new BadLine({ line, path, expected, got: told.slice(0, 60) });
}

const refuseFor = (line: number, { path, expected, got }: Unreadable): never =>
  refuseLine(line, path, expected, got);

/** No program writes a row that is half as deep; what is far deeper could not be saved or compared again. */
const DEEPEST = 40;

/** A value within others, so many of them at most. */
const isWithin = (value: unknown, left: number): boolean =>
  typeof value !== 'object' ||
  value === null ||
  (left > 0 && Object.values(value).every((inner) => isWithin(inner, left - 1)));

/** A line's value; undefined: it is none, or is deeper than any that is written. */
export function parseLine(line: string): unknown {
  try {
    const value: unknown = JSON.parse(line);
    return isWithin(value, DEEPEST) ? value : undefined;
  } catch {
    return undefined;
  }
}

/** Some lines of a file; `at`: how many stand before them. */
export interface Lines {
  readonly lines: readonly string[];
  readonly at: number;
}

/** @throws BadLine */
export function readPictures({ lines, at }: Lines): readonly SavedPicture[] {
  const pictures = new Map<string, SavedPicture>();
  for (const [i, line] of lines.entries()) {
    const row = parseLine(line);
    if (!isPictureLine(row)) return refuseLine(at + i + 1, 'picture', 'a picture', kindOf(row));
    const { saved, reason } = { reason: null, ...readSavedPicture(row) };
    if (saved === null) return refuseFor(at + i + 1, reason!);
    if (pictures.has(saved.picture))
      refuseLine(at + i + 1, 'picture', 'a formula of its own', saved.picture);
    pictures.set(saved.picture, saved);
  }
  return [...pictures.values()];
}

/** @throws BadLine */
export function readCircleLines({ lines, at }: Lines): Change {
  const { saved, reason } = readSavedCircle(lines.map(parseLine));
  return reason === null ? saved : refuseFor(at + reason.at + 1, reason);
}

/** @throws BadLine */
export function readKeepsakeLines({ lines, at }: Lines): SavedKeepsakes {
  const { saved, reason } = readSavedKeepsakes(lines.map(parseLine));
  return reason === null ? saved : refuseFor(at + reason.at + 1, reason);
}

/**
 * A log, its seq running on by ones from 1.
 *
 * @param newest the machine version of this program
 * @throws BadLine
 */
export function readRecords({ lines, at }: Lines, newest: number): readonly LogRecord[] {
  const ids = new Set<string>();
  return lines.map((line, i) => {
    const { record, reason } = { reason: null, ...readRecord(parseLine(line), newest) };
    if (record === null) return refuseFor(at + i + 1, reason!);
    const fault = positionFault(record);
    if (fault) refuseFor(at + i + 1, fault);
    if (record.seq !== i + 1) refuseLine(at + i + 1, 'seq', String(i + 1), record.seq);
    const { id } = record.fact;
    if (ids.has(id)) refuseLine(at + i + 1, 'fact.id', 'an id of its own', id);
    ids.add(id);
    return record;
  });
}
