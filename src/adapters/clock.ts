import type { Clock, Stop } from '../../machines/ports.ts';
import type { Instant } from '../core/units.ts';

/**
 * How long a pending wake may go unchecked, ms. Timers stand still while a tablet sleeps, and a
 * screen that only went dark tells nobody when it is back: so no timer is ever trusted for long.
 * It also keeps every delay far below 2³¹ ms, past which browsers fire at once.
 */
const RECHECK = 400;

/**
 * The wall clock. `wake(at, then)` calls `then` once, never before `at`; after a sleep within 400 ms
 * of the page running again, or at once when the page is shown. An `at` already past is called in
 * the next microtask, never inside `wake`, so that the caller has its Stop first.
 */
export function makeClock(): Clock {
  const pending = new Set<{ readonly at: Instant; readonly then: () => void }>();
  let timer: ReturnType<typeof setTimeout> | null = null;

  const now = () => Date.now();

  const check = () => {
    const due = [...pending].filter((wake) => wake.at <= now()).sort((a, b) => a.at - b.at);
    for (const wake of due) {
      // One due callback may stop another.
      if (pending.delete(wake)) guarded(wake.then);
    }
    arm();
  };

  const arm = () => {
    if (timer !== null) clearTimeout(timer);
    timer = null;
    if (pending.size === 0) {
      document.removeEventListener('visibilitychange', check);
      window.removeEventListener('pageshow', check);
      return;
    }
    const soonest = Math.min(...[...pending].map((wake) => wake.at));
    timer = setTimeout(check, Math.min(Math.max(soonest - now(), 0), RECHECK));
    document.addEventListener('visibilitychange', check);
    window.addEventListener('pageshow', check);
  };

  return {
    rate: 1,
    now,
    steady: () => performance.now(),
    wake(at, then): Stop {
      const wake = { at, then };
      pending.add(wake);
      if (at <= now()) queueMicrotask(check);
      else arm();
      return () => {
        if (pending.delete(wake)) arm();
      };
    },
  };
}

/** A callback that throws must not keep the others from being called; the page still hears of it. */
function guarded(then: () => void): void {
  try {
    then();
  } catch (error) {
    reportError(error);
  }
}
