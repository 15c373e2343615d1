import { StoreError, type LogStore, type StoreTrouble } from '../../machines/ports.ts';
import type { LogRecord } from '../../src/core/records/record.ts';

export interface MemoryStore extends LogStore {
  /** What is written, by seq. A test may put anything here, or clear it under the program. */
  readonly rows: Map<number, unknown>;
  /** Let the next `times` writes fail with this trouble and leave nothing; null ends it. */
  fail(trouble: StoreTrouble | null, times?: number): void;
  /** Writes wait from now on until the returned function is called. */
  pause(): () => void;
  /** How many writes were asked for, failed ones too. */
  writes(): number;
}

/** A log in memory that keeps the port's promises: copies, all or none, taken, gone. */
export function makeMemoryStore(rows: readonly LogRecord[] = []): MemoryStore {
  const kept = new Map<number, unknown>(rows.map((row) => [row.seq, structuredClone(row)]));
  let trouble: StoreTrouble | null = null;
  let failures = 0;
  let asked = 0;
  let gate = Promise.resolve();

  const write = async (records: readonly LogRecord[], into: (copies: LogRecord[]) => void) => {
    asked += 1;
    const copies = structuredClone([...records]);
    await gate;
    if (trouble !== null && failures > 0) {
      failures -= 1;
      throw new StoreError(trouble);
    }
    into(copies);
  };
  const keep = (copies: LogRecord[]) => copies.forEach((copy) => kept.set(copy.seq, copy));

  return {
    rows: kept,
    load: async () => {
      if (trouble === 'closed' && failures > 0) throw new StoreError('closed');
      return structuredClone([...kept].sort(([a], [b]) => a - b).map(([, row]) => row));
    },
    append: (records) =>
      records.length === 0
        ? Promise.resolve()
        : write(records, (copies) => {
            const first = copies[0]?.seq ?? 1;
            if (first > 1 && !kept.has(first - 1)) throw new StoreError('gone');
            if (copies.some((copy) => kept.has(copy.seq))) throw new StoreError('taken');
            keep(copies);
          }),
    rewrite: (records) =>
      write(records, (copies) => {
        kept.clear();
        keep(copies);
      }),
    fail(next, times = 1) {
      trouble = next;
      failures = next === null ? 0 : times;
    },
    pause() {
      let go = () => {};
      gate = new Promise<void>((resolve) => (go = resolve));
      return go;
    },
    writes: () => asked,
  };
}
