import { StoreError, type Settings, type StoreTrouble } from '../../machines/ports.ts';

export interface MemorySettings extends Settings {
  readonly values: Map<string, unknown>;
  /** Every get and set fails with this from now on; null ends it. */
  fail(trouble: StoreTrouble | null): void;
}

/** Settings in memory, copied in and out as the real ones are. */
export function makeMemorySettings(values: Readonly<Record<string, unknown>> = {}): MemorySettings {
  const kept = new Map<string, unknown>(Object.entries(structuredClone(values)));
  let trouble: StoreTrouble | null = null;
  const check = () => {
    if (trouble !== null) throw new StoreError(trouble);
  };
  return {
    values: kept,
    get: async (name) => {
      check();
      return structuredClone(kept.get(name));
    },
    set: async (name, value) => {
      check();
      kept.set(name, structuredClone(value));
    },
    fail: (next) => void (trouble = next),
  };
}
