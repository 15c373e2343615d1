import { describe, expect, it, vi } from 'vitest';
import { makeHold } from '../../src/adapters/hold.ts';
import { makeFreeHold } from '../fakes/free-hold.ts';
import { makeTurnedLocks } from '../fakes/turned-locks.ts';

describe('the hold', () => {
  it('is had by one page, and by that page again', async () => {
    const locks = makeTurnedLocks();
    const first = makeHold(locks);
    const second = makeHold(locks);
    expect(await first.take('kitchen')).toBe(true);
    expect(await second.take('kitchen')).toBe(false);
    expect(await first.take('kitchen')).toBe(true);
    expect(await second.take('rehearsal')).toBe(true);
    expect(first.supported).toBe(true);
  });

  it('calls the waiting page once it is free, and that page can then take it', async () => {
    const locks = makeTurnedLocks();
    const first = makeHold(locks);
    const second = makeHold(locks);
    await first.take('kitchen');
    const taken = vi.fn();
    second.whenFree('kitchen', () => void second.take('kitchen').then(taken));
    await Promise.resolve();
    expect(taken).not.toHaveBeenCalled();
    first.release();
    await vi.waitFor(() => expect(taken).toHaveBeenCalledTimes(1));
    expect(taken).toHaveBeenCalledWith(true);
    expect(await first.take('kitchen')).toBe(false);
  });

  it('does not call a page that stopped waiting', async () => {
    const locks = makeTurnedLocks();
    const first = makeHold(locks);
    await first.take('kitchen');
    const called = vi.fn();
    const other = vi.fn();
    const stop = makeHold(locks).whenFree('kitchen', called);
    makeHold(locks).whenFree('kitchen', other);
    stop();
    stop();
    first.release();
    await vi.waitFor(() => expect(other).toHaveBeenCalledTimes(1));
    expect(called).not.toHaveBeenCalled();
  });

  it('where there are no locks, lets every page in and says so', async () => {
    vi.stubGlobal('navigator', {});
    const hold = makeHold();
    vi.unstubAllGlobals();
    expect(hold.supported).toBe(false);
    expect(await hold.take('kitchen')).toBe(true);
    const called = vi.fn();
    hold.whenFree('kitchen', called)();
    expect(called).not.toHaveBeenCalled();
  });

  it('where locks are forbidden, the same', async () => {
    const request = () => Promise.reject(new DOMException('', 'SecurityError'));
    const hold = makeHold({ request } as unknown as LockManager);
    expect(await hold.take('kitchen')).toBe(true);
    expect(hold.supported).toBe(false);
  });

  it('has a fake that keeps to the port', async () => {
    const hold = makeFreeHold(['kitchen']);
    expect(await hold.take('kitchen')).toBe(false);
    expect(await hold.take('rehearsal')).toBe(true);
    const called = vi.fn();
    const stopped = vi.fn();
    hold.whenFree('kitchen', called);
    hold.whenFree('kitchen', stopped)();
    hold.free('kitchen');
    expect(called).toHaveBeenCalledTimes(1);
    expect(stopped).not.toHaveBeenCalled();
    expect(await hold.take('kitchen')).toBe(true);
  });
});
