// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { makeBeat } from '../../src/adapters/beat.ts';

const see = (state: 'visible' | 'hidden') => {
  vi.spyOn(document, 'visibilityState', 'get').mockReturnValue(state);
  document.dispatchEvent(new Event('visibilitychange'));
};

describe('the beat', () => {
  beforeEach(() => {
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] });
  });
  afterEach(() => {
    vi.useRealTimers();
    vi.restoreAllMocks();
  });

  it('comes every so often', () => {
    const then = vi.fn();
    const stop = makeBeat(1000, then);
    vi.advanceTimersByTime(3500);
    expect(then).toHaveBeenCalledTimes(3);
    stop();
  });

  it.each<[string, () => void]>([
    ['shown again', () => see('visible')],
    ['thawed', () => document.dispatchEvent(new Event('resume'))],
    ['brought back from the cache', () => window.dispatchEvent(new Event('pageshow'))],
  ])('comes at once when the page is %s, without waiting for a timer', (_, back) => {
    const then = vi.fn();
    const stop = makeBeat(1000, then);
    back();
    expect(then).toHaveBeenCalledTimes(1);
    stop();
  });

  it('does not come when the page is hidden, nor after it was stopped', () => {
    const then = vi.fn();
    const stop = makeBeat(1000, then);
    see('hidden');
    stop();
    see('visible');
    vi.advanceTimersByTime(5000);
    expect(then).not.toHaveBeenCalled();
  });
});
