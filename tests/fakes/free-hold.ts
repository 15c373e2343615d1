import type { Hold } from '../../machines/ports.ts';

export interface FreeHold extends Hold {
  readonly supported: boolean;
  /** Another page lets go of `name`: those who wait are called. */
  free(name: string): void;
}

/** A hold where every name is free but those that "another page" holds. */
export function makeFreeHold(taken: readonly string[] = []): FreeHold {
  const elsewhere = new Set(taken);
  const waiting = new Set<{ readonly name: string; readonly then: () => void }>();
  return {
    supported: true,
    take: async (name) => !elsewhere.has(name),
    whenFree(name, then) {
      const wait = { name, then };
      waiting.add(wait);
      if (!elsewhere.has(name)) {
        queueMicrotask(() => {
          if (waiting.delete(wait)) then();
        });
      }
      return () => void waiting.delete(wait);
    },
    free(name) {
      elsewhere.delete(name);
      for (const wait of [...waiting]) {
        if (wait.name === name && waiting.delete(wait)) wait.then();
      }
    },
  };
}
