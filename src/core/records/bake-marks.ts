import type { LogRecord } from './record.ts';

/**
 * The mark of every bake that ever began, by its id: the least number, from 1, that no bake running
 * at its start had. It follows from the log alone and never changes while the bake runs.
 */
export function bakeMarks(records: readonly LogRecord[]): Readonly<Record<string, number>> {
  const marks: Record<string, number> = {};
  for (const { fact, position } of records) {
    if (fact.kind !== 'start') continue;
    const taken = Object.keys(position.bakes)
      .filter((id) => id !== fact.bake)
      .map((id) => marks[id]);
    let mark = 1;
    while (taken.includes(mark)) mark += 1;
    marks[fact.bake] = mark;
  }
  return marks;
}
