import type { Clock } from '../../machines/ports.ts';
import type { Instant } from '../../src/core/units.ts';

export interface TurnedClock extends Clock {
  /** Let `ms` pass: each wake is called in order, at its own instant. */
  turn(ms: number): void;
  /** Jump, as when the hour is set (back too), or after a sleep: wakes now due are called late, at `at`. */
  set(at: Instant): void;
  /** The device sleeps for `ms`: not even what is due is called, and the steady clock stands. */
  sleep(ms: number): void;
  /** Wakes not yet called and not stopped. */
  pending(): Instant[];
}

/** A clock that stands still until the test turns it. Past wakes are called in the next microtask. */
export function makeTurnedClock(start: Instant, rate = 1): TurnedClock {
  const waiting = new Set<{ readonly at: Instant; readonly then: () => void }>();
  let now = start;
  let steady = 0;

  const next = (until: Instant) =>
    [...waiting].filter((wake) => wake.at <= until).sort((a, b) => a.at - b.at)[0];
  const callDue = (until: Instant, walk: boolean) => {
    for (let wake = next(until); wake !== undefined; wake = next(until)) {
      waiting.delete(wake);
      if (walk && wake.at > now) {
        steady += wake.at - now;
        now = wake.at;
      }
      wake.then();
    }
  };

  return {
    rate,
    now: () => now,
    steady: () => steady,
    wake(at, then) {
      const wake = { at, then };
      waiting.add(wake);
      if (at <= now) queueMicrotask(() => callDue(now, false));
      return () => void waiting.delete(wake);
    },
    turn(ms) {
      const end = now + ms;
      callDue(end, true);
      steady += end - now;
      now = end;
    },
    set(at) {
      now = at;
      callDue(now, false);
    },
    sleep: (ms) => void (now += ms),
    pending: () => [...waiting].map((wake) => wake.at).sort((a, b) => a - b),
  };
}
