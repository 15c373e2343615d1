import type { Stop } from '../../machines/ports.ts';

/**
 * Calls back every `ms` real milliseconds, and at once when the page is shown again or thawed:
 * timers of a hidden page run once a minute at best, and who comes back must not wait for one.
 */
export function makeBeat(ms: number, then: () => void): Stop {
  const timer = setInterval(then, ms);
  const shown = () => {
    if (document.visibilityState === 'visible') then();
  };
  document.addEventListener('visibilitychange', shown);
  document.addEventListener('resume', shown);
  window.addEventListener('pageshow', shown);
  return () => {
    clearInterval(timer);
    document.removeEventListener('visibilitychange', shown);
    document.removeEventListener('resume', shown);
    window.removeEventListener('pageshow', shown);
  };
}
