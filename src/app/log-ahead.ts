import type { House } from '../screens/house.ts';

/** So many rows are read at once: some milliseconds of a slow tablet. Judgement. */
const AT_ONCE = 2_000;

/** Once the page has nothing to do; never, where a browser cannot tell. */
export function whenIdle(then: () => void): () => void {
  if (typeof requestIdleCallback === 'undefined') return () => undefined;
  const asked = requestIdleCallback(() => then());
  return () => cancelIdleCallback(asked);
}

/**
 * Has the Log here before its press, and the bakes of a long log read, a piece each time the page is free.
 * Undone by what it returns.
 */
export function fetchLogAhead(
  house: Pick<House, 'records'>,
  whenFree: (then: () => void) => () => void,
): () => void {
  let stop = (): void => undefined;
  const readOn = (read: (rows: number) => boolean, rows: number): void => {
    stop = whenFree(() => {
      if (read(rows)) readOn(read, rows + AT_ONCE);
    });
  };
  let isOver = false;
  stop = whenFree(() => {
    void Promise.all([
      import('../screens/log/all-bakes.ts'),
      import('../screens/log/Log.tsx'),
      import('./open-house-log.ts'),
    ]).then(
      ([{ readAhead }]) => {
        if (!isOver) readOn((rows) => readAhead(house, rows), AT_ONCE);
      },
      // Its press asks for it again, and tells what is wrong.
      () => undefined,
    );
  });
  return () => {
    isOver = true;
    stop();
  };
}
