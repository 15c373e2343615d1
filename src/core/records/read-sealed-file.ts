import { Fields, Refused } from '../formula/read-fields.ts';
import { readEquipment } from '../kitchen/read-equipment.ts';
import {
  parseLine,
  readCircleLines,
  readKeepsakeLines,
  readPictures,
  readRecords,
  refuseLine,
  type Lines,
} from './file-lines.ts';
import { bodyAt, readHead, type FileRows } from './log-file.ts';
import type { SavedFile } from './read-log-file.ts';

/** More lines of one kind than a tablet could hold. */
const MANY = 10_000_000;
const OTHERS = 1_000;

/** @throws Refused */
function readRows(value: unknown): FileRows {
  const of = Fields.read(value, 'rows');
  const count = (name: keyof FileRows): number => of.number(name, 0, MANY, true);
  return {
    pictures: count('pictures'),
    circle: count('circle'),
    keepsakes: count('keepsakes'),
    records: count('records'),
    others: of.list('others', 0, OTHERS, (one, path) =>
      Number.isInteger(one) && (one as number) > 0
        ? (one as number)
        : of.refuse('others', 'whole numbers from 1', path),
    ),
  };
}

/** @throws BadLine */
function readContents(line: string, lines: number) {
  try {
    const of = Fields.read(parseLine(line), '');
    const rows = of.by('rows', readRows);
    const { others, ...counts } = rows;
    const told = [...Object.values(counts), ...others].reduce((sum, one) => sum + one, 1);
    if (told !== lines) return refuseLine(2, 'rows', `${lines} lines`, told);
    const { equipment, reason } = readEquipment(of.by('equipment', (value) => value));
    if (equipment === null)
      return refuseLine(2, `equipment.${reason.path}`, reason.expected, reason.got);
    return { equipment, rows };
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    const { path, expected, got } = error.misread;
    return refuseLine(2, path, expected, got);
  }
}

/**
 * A file whose head has the sum of what follows: nothing of it is read before the sum was found to be that.
 * It tells a cut or damaged file; it keeps nobody out, who can reckon it too.
 *
 * @param newest the machine version of this program
 * @param sum SHA-256 of its body (FIPS 180-4), 64 small hexadecimal digits
 * @throws BadLine
 */
export function readSealedFile(text: string, newest: number, sum: string): SavedFile {
  const at = bodyAt(text);
  const head = readHead(text.slice(0, at).replace(/\n$/, ''));
  if (head === null) return refuseLine(1, 'head', 'its version, lines and sum', 'another');
  const lines = text.slice(at).split('\n');
  // Behind the last line there is nothing; where it was cut it is no line.
  const rest = lines.pop();
  if (lines.length < head.lines) return refuseLine(1, 'cut', String(head.lines), lines.length);
  if (rest !== '' || lines.length > head.lines || sum !== head.sum)
    return refuseLine(1, 'sum', head.sum, 'another');
  if (lines.length === 0) return refuseLine(1, 'lines', 'at least 1', 0);

  const { equipment, rows } = readContents(lines[0]!, head.lines);
  let next = 1;
  const part = (count: number): Lines => {
    const from = next;
    next += count;
    return { lines: lines.slice(from, next), at: from + 1 };
  };
  const pictures = readPictures(part(rows.pictures));
  const circle = rows.circle === 0 ? null : readCircleLines(part(rows.circle));
  const keepsakes = readKeepsakeLines(part(rows.keepsakes));
  const records = readRecords(part(rows.records), newest);
  const others = rows.others.map((count) => readRecords(part(count), newest));
  return { records, others, equipment, pictures, circle, keepsakes };
}
