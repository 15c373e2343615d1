import type { KeepsakeRows } from '../../../machines/ports.ts';
import { makeKeepsakeStore } from './keepsake-store.ts';

/** Rows that last as long as the page. */
function makePassingRows(): KeepsakeRows {
  const said = new Map<string, unknown>();
  const kept = new Map<string, unknown>();
  const put = (into: Map<string, unknown>, rows: ReadonlyMap<string, unknown>): void => {
    for (const [key, row] of rows) {
      if (row === null) into.delete(key);
      else into.set(key, row);
    }
  };
  return {
    load: () => Promise.resolve(new Map(said)),
    loadKept: (start) =>
      Promise.resolve(
        new Map([...kept].filter(([key]) => start === undefined || key.startsWith(`${start}/`))),
      ),
    write(saidRows, keptRows) {
      put(said, saidRows);
      put(kept, keptRows);
      return Promise.resolve();
    },
  };
}

/** @param earnest false in a rehearsal: what is kept there passes with the page, and nothing is written */
export const openKeepsakeRows = (earnest: boolean): KeepsakeRows =>
  earnest ? makeKeepsakeStore() : makePassingRows();
