import { lastNote } from '../core/log/last-note.ts';
import { glanceLastTime, showLastTime } from '../core/speech/tell-last-time.ts';
import type { House } from './house.ts';

/** What the last bake of a formula left, to be read whole or in so many letters; null: nothing. */
export function lastTold(
  { records, kitchen }: Pick<House, 'records' | 'kitchen'>,
  formula: string,
  most?: number,
): string | null {
  const note = lastNote(records(), formula, kitchen().now);
  if (note === null) return null;
  return most === undefined ? showLastTime(note) : glanceLastTime(note, most);
}
