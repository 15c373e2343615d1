import type { Stop } from '../../machines/ports.ts';

/** Calls `end` once: at the first touch or key from now on, wherever it lands, or when it is stopped. */
export function endsByTouch(end: () => void): Stop {
  const stop = (): void => {
    window.removeEventListener('pointerdown', stop, true);
    window.removeEventListener('keydown', stop, true);
    end();
  };
  window.addEventListener('pointerdown', stop, true);
  window.addEventListener('keydown', stop, true);
  return stop;
}
