import type { CircleRows } from '../../../machines/ports.ts';
import { makeCircleStore } from './circle-store.ts';

/** Rows that last as long as the page. */
function makePassingRows(): CircleRows {
  const kept = new Map<string, unknown>();
  return {
    load: () => Promise.resolve(new Map(kept)),
    write(rows) {
      for (const [key, row] of rows) {
        if (row === null) kept.delete(key);
        else kept.set(key, row);
      }
      return Promise.resolve();
    },
  };
}

/** @param earnest false in a rehearsal: it has an empty circle of its own, and nothing of it is written */
export const openCircleRows = (earnest: boolean): CircleRows =>
  earnest ? makeCircleStore() : makePassingRows();
