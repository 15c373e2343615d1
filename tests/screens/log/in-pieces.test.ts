import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { inPieces } from '../../../src/screens/log/plots/in-pieces.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Work of so many steps that each take so many milliseconds. */
const work = (count: number, each: number) => {
  const clock = { at: 0 };
  const done = { steps: 0 };
  function* steps(): Generator<null, void> {
    for (; done.steps < count; done.steps += 1) {
      clock.at += each;
      yield null;
    }
  }
  return { clock, done, steps: steps() };
};

it('does nothing before the page is free, then a piece at a time, and no piece is long', () => {
  const { clock, done, steps } = work(100, 3);
  inPieces(steps, () => clock.at);
  expect(done.steps).toBe(0);
  let pieces = 0;
  while (done.steps < 100) {
    const before = clock.at;
    vi.advanceTimersToNextTimer();
    expect(clock.at - before).toBeLessThanOrEqual(12);
    pieces += 1;
  }
  expect(pieces).toBeGreaterThanOrEqual(25);
});

it('ends with its work, and once it is called off', () => {
  const ended = work(2, 1);
  inPieces(ended.steps, () => ended.clock.at);
  vi.runAllTimers();
  expect(vi.getTimerCount()).toBe(0);
  const stopped = work(100, 20);
  const stop = inPieces(stopped.steps, () => stopped.clock.at);
  vi.advanceTimersToNextTimer();
  stop();
  vi.runAllTimers();
  expect(stopped.done.steps).toBe(0);
  expect(vi.getTimerCount()).toBe(0);
});
