import type { SavedRow } from '../circle/saved-circle.ts';
import type { Equipment } from '../kitchen/equipment.ts';
import type { KeepsakeLine } from '../log/saved-keepsakes.ts';
import type { SavedPicture } from '../pictures/saved-picture.ts';
import type { Logs } from './merge-logs.ts';

/** Version of a saved file's first line; a file without that line is a bare log. */
export const FILE_VERSION = 4;
/** The first that may hold a circle. */
export const CIRCLE_VERSION = 3;
/** The first whose head has the sum of what follows. */
export const SEALED_VERSION = 4;

/** What a file is saved with. */
export interface FileParts extends Logs {
  readonly equipment: Equipment;
  readonly pictures: readonly SavedPicture[];
  readonly circle: readonly SavedRow[];
  readonly keepsakes: readonly KeepsakeLine[];
}

/** How many lines each part of a file has, in their order there. */
export interface FileRows {
  readonly pictures: number;
  readonly circle: number;
  readonly keepsakes: number;
  readonly records: number;
  readonly others: readonly number[];
}

const HEAD = /^\{"kitchenFile":4,"lines":(0|[1-9]\d{0,9}),"sum":"([0-9a-f]{64})"\}$/;

/** The first line, in the one way it is written: of it too every byte counts. */
export const headOf = (lines: number, sum: string): string =>
  `{"kitchenFile":${SEALED_VERSION},"lines":${lines},"sum":"${sum}"}`;

/** Null: it is not as it is written. */
export function readHead(line: string): { readonly lines: number; readonly sum: string } | null {
  const found = HEAD.exec(line);
  return found && { lines: Number(found[1]), sum: found[2]! };
}

/**
 * All that stands behind the head, and how many lines it is: what the kitchen bakes with and how many lines
 * each part has, then the parts, one JSON value a line.
 */
export function fileBody({ equipment, pictures, circle, keepsakes, own, others }: FileParts): {
  readonly lines: number;
  readonly body: string;
} {
  const rows: FileRows = {
    pictures: pictures.length,
    circle: circle.length,
    keepsakes: keepsakes.length,
    records: own.length,
    others: others.map((log) => log.length),
  };
  const lines = [
    { equipment, rows },
    ...[...pictures, ...circle, ...keepsakes, ...own],
    ...others.flat(),
  ].map((line) => `${JSON.stringify(line)}\n`);
  return { lines: lines.length, body: lines.join('') };
}

/** Where the body of a file begins: behind its head's line. */
export const bodyAt = (text: string): number => {
  const end = text.indexOf('\n');
  return end < 0 ? text.length : end + 1;
};
