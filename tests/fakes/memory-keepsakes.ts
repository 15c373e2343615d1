import { StoreError, type KeepsakeRows, type StoreTrouble } from '../../machines/ports.ts';

export interface MemoryKeepsakes extends KeepsakeRows {
  readonly said: Map<unknown, unknown>;
  readonly kept: Map<unknown, unknown>;
  /** Every load and write fails with this from now on; null ends it. */
  fail(trouble: StoreTrouble | null): void;
}

/** What is kept of bakes, in memory; what is kept is a copy. */
export function makeMemoryKeepsakes(): MemoryKeepsakes {
  const said = new Map<unknown, unknown>();
  const kept = new Map<unknown, unknown>();
  let trouble: StoreTrouble | null = null;
  const check = () => {
    if (trouble !== null) throw new StoreError(trouble);
  };
  const put = (into: Map<unknown, unknown>, rows: ReadonlyMap<string, unknown>) => {
    for (const [key, row] of rows) {
      if (row === null) into.delete(key);
      else into.set(key, structuredClone(row));
    }
  };
  return {
    said,
    kept,
    load: async () => (check(), new Map(structuredClone([...said]))),
    loadKept: async (start) => {
      check();
      const its = [...kept].filter(
        ([key]) => start === undefined || String(key).startsWith(`${start}/`),
      );
      return new Map(structuredClone(its));
    },
    write: async (saidRows, keptRows) => {
      check();
      put(said, saidRows);
      put(kept, keptRows);
    },
    fail: (next) => void (trouble = next),
  };
}
