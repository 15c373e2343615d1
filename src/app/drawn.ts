import { afterPaint } from '../parts/after-paint.ts';
import type { Stop } from '../../machines/ports.ts';

/** Longer than this nothing waits for a frame, ms: what is put off here lays calls and arms alarms. */
const LATEST = 100;

/**
 * Calls back once what has just changed is on the glass, at once where the page is not seen, and soon
 * where it is seen no more before its next frame.
 */
export function drawn(then: () => void): Stop {
  if (document.visibilityState === 'hidden') {
    then();
    return () => undefined;
  }
  const callOff = (): void => {
    stopWaiting();
    clearTimeout(timer);
  };
  const now = (): void => {
    callOff();
    then();
  };
  const stopWaiting = afterPaint(now);
  const timer = setTimeout(now, LATEST);
  return callOff;
}
