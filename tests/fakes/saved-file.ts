import { sumOf } from '../../src/adapters/sum.ts';
import {
  bodyAt,
  fileBody,
  headOf,
  type FileParts,
  type FileRows,
} from '../../src/core/records/log-file.ts';

/** What a tablet with this would save. */
export function fileOf(parts: FileParts): string {
  const { lines, body } = fileBody(parts);
  return `${headOf(lines, sumOf(body))}\n${body}`;
}

/** The sum that its reader is handed. */
export const sumIn = (file: string): string => sumOf(file.slice(bodyAt(file)));

/** The lines behind the head. */
export const bodyOf = (file: string): readonly string[] => file.split('\n').slice(1, -1);

/** These lines behind a head that is right of them: what a forger would do. */
export function sealed(body: readonly string[]): string {
  const text = body.map((line) => `${line}\n`).join('');
  return `${headOf(body.length, sumOf(text))}\n${text}`;
}

/** The same lines as a program of before the sum wrote them: kitchen, circle and log, and no more. */
export function asOld(file: string): readonly string[] {
  const [contents, ...lines] = bodyOf(file);
  const { equipment, rows } = JSON.parse(contents!) as { equipment: unknown; rows: FileRows };
  const { circle, pictures, keepsakes, records } = rows;
  const log = pictures + circle + keepsakes;
  const head = { kitchenFile: circle > 0 ? 3 : 1, equipment, ...(circle > 0 ? { circle } : {}) };
  return [
    JSON.stringify(head),
    ...lines.slice(pictures, pictures + circle),
    ...lines.slice(log, log + records),
  ];
}
