// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { makeClock } from '../../src/adapters/clock.ts';
import { makeRehearsalClock } from '../../src/adapters/rehearsal-clock.ts';
import { makeTurnedClock } from '../fakes/turned-clock.ts';

const START = Date.UTC(2031, 4, 3, 6, 0);
const DAY = 86_400_000;

describe('the wall clock', () => {
  beforeEach(() => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'Date'], now: START });
  });
  afterEach(() => {
    vi.useRealTimers();
    vi.restoreAllMocks();
  });

  it('calls once, at the instant and not before', () => {
    const then = vi.fn();
    makeClock().wake(START + 90_000, then);
    vi.advanceTimersByTime(89_999);
    expect(then).not.toHaveBeenCalled();
    vi.advanceTimersByTime(1);
    expect(then).toHaveBeenCalledTimes(1);
    vi.advanceTimersByTime(DAY / 24);
    expect(then).toHaveBeenCalledTimes(1);
  });

  it('is not early when a timer fires early', () => {
    const then = vi.fn();
    makeClock().wake(START + 100, then);
    vi.setSystemTime(START - 5); // so the timer fires 5 ms before the instant
    vi.advanceTimersByTime(100);
    expect(then).not.toHaveBeenCalled();
    vi.advanceTimersByTime(5);
    expect(then).toHaveBeenCalledTimes(1);
  });

  it('waits 40 days, though one timer cannot', () => {
    const set = vi.spyOn(globalThis, 'setTimeout');
    const then = vi.fn();
    makeClock().wake(START + 40 * DAY, then);
    vi.advanceTimersByTime(10_000);
    expect(Math.max(...set.mock.calls.map(([, ms]) => ms ?? 0))).toBeLessThan(2 ** 31);
    vi.setSystemTime(START + 40 * DAY - 1);
    vi.advanceTimersByTime(0);
    expect(then).not.toHaveBeenCalled();
    vi.advanceTimersByTime(400);
    expect(then).toHaveBeenCalledTimes(1);
  });

  it('is right within 500 ms of a 47-minute sleep that no event announced', () => {
    const then = vi.fn();
    makeClock().wake(START + 20 * 60_000, then);
    vi.setSystemTime(START + 47 * 60_000); // the timers did not run meanwhile
    vi.advanceTimersByTime(500);
    expect(then).toHaveBeenCalledTimes(1);
  });

  it.each([
    ['visibilitychange', () => document.dispatchEvent(new Event('visibilitychange'))],
    ['pageshow', () => window.dispatchEvent(new Event('pageshow'))],
  ])('looks again at once on %s', (_name, happen) => {
    const then = vi.fn();
    makeClock().wake(START + 60_000, then);
    happen();
    expect(then).not.toHaveBeenCalled();
    vi.setSystemTime(START + 60_000);
    happen();
    expect(then).toHaveBeenCalledTimes(1);
  });

  it('calls for a past instant at once, but after wake has returned', async () => {
    const order: string[] = [];
    makeClock().wake(START - 1, () => order.push('called'));
    order.push('returned');
    await Promise.resolve();
    expect(order).toEqual(['returned', 'called']);
  });

  it('calls in the order of the instants', () => {
    const order: number[] = [];
    const clock = makeClock();
    for (const ms of [300, 100, 200]) clock.wake(START + ms, () => order.push(ms));
    vi.setSystemTime(START + 1000);
    window.dispatchEvent(new Event('pageshow'));
    expect(order).toEqual([100, 200, 300]);
  });

  it('does not call when stopped, even by another wake due at the same time', () => {
    const then = vi.fn();
    const clock = makeClock();
    let stop = () => {};
    clock.wake(START + 50, () => stop());
    stop = clock.wake(START + 60, then);
    vi.setSystemTime(START + 100);
    vi.advanceTimersByTime(400);
    expect(then).not.toHaveBeenCalled();
    stop();
    expect(vi.getTimerCount()).toBe(0);
  });

  it('leaves neither timer nor listener behind', () => {
    const added = vi.spyOn(document, 'addEventListener');
    const removed = vi.spyOn(document, 'removeEventListener');
    const stop = makeClock().wake(START + 50, () => {});
    expect(added).toHaveBeenCalledWith('visibilitychange', expect.any(Function));
    stop();
    stop();
    expect(vi.getTimerCount()).toBe(0);
    expect(removed.mock.calls.at(-1)).toEqual(added.mock.calls.at(-1));
  });

  it('calls the rest when one callback throws, and reports it', () => {
    const report = vi.fn();
    vi.stubGlobal('reportError', report);
    const then = vi.fn();
    const clock = makeClock();
    clock.wake(START + 1, () => {
      throw new Error('first');
    });
    clock.wake(START + 2, then);
    vi.advanceTimersByTime(10);
    vi.unstubAllGlobals();
    expect(then).toHaveBeenCalledTimes(1);
    expect(report).toHaveBeenCalledWith(new Error('first'));
  });
});

describe('the rehearsal clock', () => {
  it('runs rate times as fast from where it was told', () => {
    const wall = makeTurnedClock(START);
    const clock = makeRehearsalClock(wall, 60, START + DAY);
    expect(clock.now()).toBe(START + DAY);
    wall.turn(60_000);
    expect(clock.now()).toBe(START + DAY + 3_600_000);
    expect(clock.rate).toBe(60);
  });

  it.each([1, 7, 60, 999])('at rate %i is never early', (rate) => {
    const wall = makeTurnedClock(START);
    const clock = makeRehearsalClock(wall, rate, START + DAY);
    const at = START + DAY + 12_345_677;
    let seen = 0;
    clock.wake(at, () => (seen = clock.now()));
    wall.turn(12_345_677);
    expect(seen).toBeGreaterThanOrEqual(at);
    expect(seen).toBeLessThan(at + rate);
  });

  it.each([0, -2, Number.NaN, Number.POSITIVE_INFINITY])('refuses the rate %d', (rate) => {
    expect(() => makeRehearsalClock(makeTurnedClock(START), rate, START)).toThrow(
      `makeRehearsalClock: rate ${rate} is not a number above 0.`,
    );
  });
});

describe('the turned clock', () => {
  it('walks wakes in order and shows each its own instant; a jump shows the jump', () => {
    const clock = makeTurnedClock(START);
    const seen: [string, number][] = [];
    const note = (name: string) => () => seen.push([name, clock.now() - START]);
    clock.wake(START + 200, note('b'));
    clock.wake(START + 100, () => {
      note('a')();
      clock.wake(START + 150, note('from a'));
    });
    clock.wake(START + 900, note('late'))();
    clock.turn(300);
    clock.wake(START + 400, note('slept through'));
    clock.set(START + 1000);
    expect(seen).toEqual([
      ['a', 100],
      ['from a', 150],
      ['b', 200],
      ['slept through', 1000],
    ]);
    expect(clock.pending()).toEqual([]);
  });
});
