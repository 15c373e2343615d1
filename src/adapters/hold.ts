import type { Hold, Stop } from '../../machines/ports.ts';

/** A hold, and whether this browser can hold at all. */
export interface PageHold extends Hold {
  /**
   * False where there are no Web Locks (plain http on a LAN name, old browsers). Then `take` resolves
   * true all the same and two pages are told apart only by the log, which refuses the second writer.
   */
  readonly supported: boolean;
  /** Gives up what this page holds. */
  readonly release: Stop;
}

/**
 * One page holds the kitchen, by a Web Lock that lasts as long as the page. `take` never waits: true
 * when this page holds `name` (also when it did already), false when another does. `whenFree` calls
 * back once nobody holds it, and does not take it: then ask `take` again.
 */
export function makeHold(locks: LockManager | undefined = navigator.locks): PageHold {
  const held = new Map<string, () => void>();
  let supported = locks !== undefined;

  const take = (name: string): Promise<boolean> => {
    if (locks === undefined || held.has(name)) return Promise.resolve(true);
    return new Promise((resolve) => {
      let asked = false;
      const keepIt = (lock: Lock | null) => {
        asked = true;
        resolve(lock !== null);
        if (lock === null) return;
        return new Promise<void>((release) => held.set(name, release));
      };
      locks.request(name, { ifAvailable: true }, keepIt).catch(() => {
        held.delete(name);
        if (asked) return;
        supported = false; // the browser has locks but forbids them here
        resolve(true);
      });
    });
  };

  return {
    get supported() {
      return supported;
    },
    take,
    whenFree(name, then) {
      if (locks === undefined) return () => {};
      const stop = new AbortController();
      locks
        .request(name, { signal: stop.signal }, () => {})
        .then(
          // After the lock has gone back: inside its callback `take` would find it held, by us.
          () => {
            if (!stop.signal.aborted) then();
          },
          () => {}, // stopped, or forbidden: it will not be called
        );
      return () => stop.abort();
    },
    release() {
      for (const give of held.values()) give();
      held.clear();
    },
  };
}
