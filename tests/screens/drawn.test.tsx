import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { drawn } from '../../src/app/drawn.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
});

const hidden = (state: 'hidden' | 'visible') =>
  vi.spyOn(document, 'visibilityState', 'get').mockReturnValue(state);

it('waits for the frame, and calls back once', () => {
  hidden('visible');
  const then = vi.fn();
  drawn(then);
  expect(then).not.toHaveBeenCalled();
  vi.advanceTimersByTime(40);
  expect(then).toHaveBeenCalledTimes(1);
  vi.advanceTimersByTime(1_000);
  expect(then).toHaveBeenCalledTimes(1);
});

it('waits for no frame where the page is not seen', () => {
  hidden('hidden');
  const then = vi.fn();
  drawn(then);
  expect(then).toHaveBeenCalledTimes(1);
});

it('waits no longer than a tenth of a second for a frame that does not come', () => {
  hidden('visible');
  vi.spyOn(globalThis, 'requestAnimationFrame').mockReturnValue(1);
  const then = vi.fn();
  drawn(then);
  vi.advanceTimersByTime(99);
  expect(then).not.toHaveBeenCalled();
  vi.advanceTimersByTime(1);
  expect(then).toHaveBeenCalledTimes(1);
});

it('called off it never calls back', () => {
  hidden('visible');
  const then = vi.fn();
  drawn(then)();
  vi.advanceTimersByTime(1_000);
  expect(then).not.toHaveBeenCalled();
});
