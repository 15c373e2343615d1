import { holdsNone } from '../../core/log/saved-keepsakes.ts';
import { readAFile } from '../../core/speech/words/read-a-file.ts';
import { fill } from '../../core/speech/fill.ts';
import type { Instant } from '../../core/units.ts';
import type { LogFile } from '../house.ts';

const bakesOf = ({ comes, bakes, fresh, last }: LogFile, date: (at: Instant) => string): string => {
  if (comes === 'already') return readAFile.nothing;
  if (comes === 'beside') return fill(readAFile.besideYours, { count: fresh });
  if (last === null) return readAFile.none;
  return comes === 'all'
    ? fill(readAFile.found, { count: bakes, date: date(last) })
    : fill(readAFile.comes, { count: fresh, date: date(last) });
};

/** What will happen with a file that may be taken in; null: none is chosen yet. */
export function fileWords(
  file: LogFile | null,
  date: (at: Instant) => string,
): { readonly headline: string; readonly detail: string } {
  if (file === null) return { headline: readAFile.title, detail: readAFile.detail };
  const keepsakes = !holdsNone(file.keepsakes);
  const beside = [
    ...(file.circle !== null && keepsakes ? [readAFile.both] : []),
    ...(file.circle !== null && !keepsakes ? [readAFile.circle] : []),
    ...(file.circle === null && keepsakes ? [readAFile.keepsakes] : []),
  ];
  const detail = [bakesOf(file, date), ...beside].join(' ');
  return { headline: readAFile[file.comes], detail };
}

/** Whether there is anything to take in: what is beside a log is looked for where it is written. */
export const bringsAnything = (file: LogFile | null): boolean =>
  file !== null &&
  (file.comes !== 'already' ||
    file.circle !== null ||
    !holdsNone(file.keepsakes) ||
    file.pictures.length > 0);
