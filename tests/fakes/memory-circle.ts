import { StoreError, type CircleRows, type StoreTrouble } from '../../machines/ports.ts';

export interface MemoryCircle extends CircleRows {
  readonly rows: Map<unknown, unknown>;
  /** Every load and write fails with this from now on; null ends it. */
  fail(trouble: StoreTrouble | null): void;
}

/** The circle's rows in memory, by their keys as a disk has them; what is kept is a copy. */
export function makeMemoryCircle(
  first: readonly (readonly [unknown, unknown])[] = [],
): MemoryCircle {
  const rows = new Map<unknown, unknown>(first);
  let trouble: StoreTrouble | null = null;
  const check = () => {
    if (trouble !== null) throw new StoreError(trouble);
  };
  return {
    rows,
    load: async () => {
      check();
      const sorted = [...rows].toSorted(([a], [b]) => (String(a) < String(b) ? -1 : 1));
      return new Map(structuredClone(sorted));
    },
    write: async (next) => {
      check();
      for (const [key, row] of next) {
        if (row === null) rows.delete(key);
        else rows.set(key, structuredClone(row));
      }
    },
    fail: (next) => void (trouble = next),
  };
}
