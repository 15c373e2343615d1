import type { ScreenAwake, Stop } from '../../machines/ports.ts';

type State = ReturnType<ScreenAwake['state']>;

/**
 * Keeps the screen lit by a wake lock while anyone holds. The browser takes the lock away whenever
 * the page is hidden, and may do so on a low battery: it is asked for again each time the page is
 * shown, and `lost` says that the screen may go dark now (also before anyone holds). What was lost out
 * of sight is told only if it does not come back: nobody saw it, and who returns needs no alarm.
 * `unavailable`: this browser has no wake lock (plain http, older tablets).
 */
export function makeScreenAwake(
  wakeLock: WakeLock | undefined = navigator.wakeLock,
): ScreenAwake & { readonly close: Stop } {
  const listeners = new Set<(state: State) => void>();
  const holders = new Set<symbol>();
  let state: State = wakeLock === undefined ? 'unavailable' : 'lost';
  let sentinel: WakeLockSentinel | null = null;
  let asking = false;

  const become = (next: State) => {
    if (next === state) return;
    state = next;
    for (const then of listeners) then(next);
  };

  const ask = async () => {
    // A page that was frozen hears of the release only after it is shown.
    if (sentinel?.released) sentinel = null;
    const idle = asking || sentinel !== null || holders.size === 0;
    if (wakeLock === undefined || idle || document.visibilityState !== 'visible') return;
    asking = true;
    try {
      const got = await wakeLock.request('screen');
      asking = false;
      if (holders.size === 0) return void got.release();
      if (got.released) return become('lost');
      sentinel = got;
      got.addEventListener('release', () => {
        if (sentinel === got) sentinel = null;
        else if (sentinel !== null || asking) return;
        if (holders.size === 0 || document.visibilityState === 'visible') become('lost');
      });
      become('held');
    } catch {
      asking = false;
      become('lost'); // refused: hidden meanwhile, or the battery is low
    }
  };
  const onShown = () => void ask();
  document.addEventListener('visibilitychange', onShown);

  return {
    state: () => state,
    onState(then) {
      listeners.add(then);
      return () => void listeners.delete(then);
    },
    hold() {
      const holder = Symbol();
      holders.add(holder);
      void ask();
      return () => {
        holders.delete(holder);
        if (holders.size === 0) void sentinel?.release();
      };
    },
    close() {
      document.removeEventListener('visibilitychange', onShown);
      holders.clear();
      void sentinel?.release();
    },
  };
}
