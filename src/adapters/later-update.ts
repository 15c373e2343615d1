import type { Update } from '../../machines/ports.ts';

/** Looks for a new version once someone asks for it: its code is no part of the first paint. */
export const makeLaterUpdate = (): Update => ({
  onOffer(then) {
    let stop: (() => void) | null = null;
    let stopped = false;
    void import('./update.ts').then(({ makeUpdate }) => {
      if (!stopped) stop = makeUpdate().update.onOffer(then);
    });
    return () => {
      stopped = true;
      stop?.();
    };
  },
});
