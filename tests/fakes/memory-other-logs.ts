import { StoreError, type OtherLogs, type StoreTrouble } from '../../machines/ports.ts';

export interface MemoryOtherLogs extends OtherLogs {
  readonly logs: Map<string, readonly unknown[]>;
  /** Every load and write fails with this from now on; null ends it. */
  fail(trouble: StoreTrouble | null): void;
}

/** Logs of other tablets in memory; what is kept is a copy. */
export function makeMemoryOtherLogs(): MemoryOtherLogs {
  const logs = new Map<string, readonly unknown[]>();
  let trouble: StoreTrouble | null = null;
  const check = () => {
    if (trouble !== null) throw new StoreError(trouble);
  };
  return {
    logs,
    load: async () => (check(), structuredClone(logs)),
    write: async (next) => {
      check();
      for (const [name, rows] of next) {
        if (rows === null) logs.delete(name);
        else logs.set(name, structuredClone(rows));
      }
    },
    fail: (next) => void (trouble = next),
  };
}
