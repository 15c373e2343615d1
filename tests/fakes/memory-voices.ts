import type { VoiceRows } from '../../machines/ear-port.ts';
import { StoreError } from '../../machines/ports.ts';

/** Known voices in memory; `full` makes the next writes fail. */
export function makeMemoryVoices(
  rows: ReadonlyMap<string, unknown> = new Map(),
): VoiceRows & { readonly rows: Map<string, unknown>; full: boolean } {
  const kept = new Map(rows);
  return {
    rows: kept,
    full: false,
    load: () => Promise.resolve(new Map(kept)),
    write(changed) {
      if (this.full) return Promise.reject(new StoreError('full'));
      for (const [key, row] of changed) {
        if (row === null) kept.delete(key);
        else kept.set(key, row);
      }
      return Promise.resolve();
    },
  };
}
