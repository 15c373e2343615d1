import type { LogRecord } from '../records/record.ts';
import { bakeRows, type BakeRows } from './bake-rows.ts';

/** A log that a bake stands in. */
export interface StandingLog {
  readonly records: readonly LogRecord[];
  /** Its name there: another bake may have had it. */
  readonly bake: string;
  readonly found: BakeRows;
}

const foundIn = (records: readonly LogRecord[], start: string): StandingLog | null => {
  const fact = records.find(({ fact: { id, kind } }) => kind === 'start' && id === start)?.fact;
  if (fact?.kind !== 'start') return null;
  const found = bakeRows(records, fact.bake, { begun: start });
  return found && { records, bake: fact.bake, found };
};

/**
 * Of several logs the one that tells most of a bake: two may share its beginning, and the one with its
 * end wins, else the first. Null: it stands in none, or was taken back.
 *
 * @example
 * standingLog([[]], 'f1') // → null
 */
export function standingLog(
  logs: readonly (readonly LogRecord[])[],
  start: string,
): StandingLog | null {
  let first: StandingLog | null = null;
  for (const records of logs) {
    const found = foundIn(records, start);
    if (found?.found.end) return found;
    first ??= found;
  }
  return first;
}
