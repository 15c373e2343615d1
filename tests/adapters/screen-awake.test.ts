// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { ScreenAwake } from '../../machines/ports.ts';
import { makeScreenAwake } from '../../src/adapters/screen-awake.ts';
import { makeTurnedScreen } from '../fakes/turned-screen.ts';

/** A browser that gives wake locks until told not to. */
class FakeWakeLock {
  given: (EventTarget & { released: boolean; release(): Promise<void> })[] = [];
  refuse = false;
  async request() {
    if (this.refuse) throw new DOMException('', 'NotAllowedError');
    const sentinel = Object.assign(new EventTarget(), {
      released: false,
      release: async () => {
        if (sentinel.released) return;
        sentinel.released = true;
        sentinel.dispatchEvent(new Event('release'));
      },
    });
    this.given.push(sentinel);
    return sentinel;
  }
  live = () => this.given.filter((sentinel) => !sentinel.released).length;
}

let wakeLock: FakeWakeLock;
let screen: ReturnType<typeof makeScreenAwake>;
let visibility: DocumentVisibilityState;
const settle = () => new Promise((resolve) => setImmediate(resolve));
const show = async (state: DocumentVisibilityState) => {
  visibility = state;
  if (state === 'hidden') for (const sentinel of wakeLock.given) await sentinel.release();
  document.dispatchEvent(new Event('visibilitychange'));
  await settle();
};

beforeEach(() => {
  visibility = 'visible';
  vi.spyOn(document, 'visibilityState', 'get').mockImplementation(() => visibility);
  wakeLock = new FakeWakeLock();
  screen = makeScreenAwake(wakeLock as unknown as WakeLock);
});
afterEach(() => {
  screen.close();
  vi.restoreAllMocks();
});

describe('the screen', () => {
  it('is held while someone holds, with one lock for all', async () => {
    expect(screen.state()).toBe('lost');
    const first = screen.hold();
    const second = screen.hold();
    await settle();
    expect(screen.state()).toBe('held');
    expect(wakeLock.given).toHaveLength(1);
    first();
    first();
    expect(wakeLock.live()).toBe(1);
    second();
    await settle();
    expect(wakeLock.live()).toBe(0);
    expect(screen.state()).toBe('lost');
  });

  it('is held again on return, and nobody hears that it was lost out of sight', async () => {
    const seen: string[] = [];
    const stop = screen.onState((state) => seen.push(state));
    screen.hold();
    await settle();
    await show('hidden');
    await show('visible');
    expect(seen).toEqual(['held']);
    expect(wakeLock.live()).toBe(1);
    await show('hidden');
    wakeLock.refuse = true;
    await show('visible');
    expect(seen).toEqual(['held', 'lost']);
    stop();
    wakeLock.refuse = false;
    await show('visible');
    expect(seen).toHaveLength(2);
  });

  it('is asked for again where a frozen page hears of the loss only after its return', async () => {
    screen.hold();
    await settle();
    const [first] = wakeLock.given;
    visibility = 'hidden';
    first!.released = true;
    document.dispatchEvent(new Event('visibilitychange'));
    await show('visible');
    first!.dispatchEvent(new Event('release'));
    await settle();
    expect(screen.state()).toBe('held');
    expect(wakeLock.live()).toBe(1);
  });

  it('is not asked for while hidden, nor on return when nobody holds', async () => {
    await show('hidden');
    const stop = screen.hold();
    await settle();
    expect(wakeLock.given).toHaveLength(0);
    stop();
    await show('visible');
    expect(wakeLock.given).toHaveLength(0);
  });

  it('is lost when the browser refuses or takes it away, and tried again on the next return', async () => {
    wakeLock.refuse = true;
    screen.hold();
    await settle();
    expect(screen.state()).toBe('lost');
    wakeLock.refuse = false;
    await show('visible');
    expect(screen.state()).toBe('held');
    await wakeLock.given[0]?.release();
    expect(screen.state()).toBe('lost');
  });

  it('gives back a lock that comes when nobody wants it any more', async () => {
    screen.hold()();
    await settle();
    expect(wakeLock.given).toHaveLength(1);
    expect(wakeLock.live()).toBe(0);
    expect(screen.state()).toBe('lost');
  });

  it('is unavailable where the browser has no wake lock', async () => {
    vi.stubGlobal('navigator', {});
    const bare = makeScreenAwake();
    vi.unstubAllGlobals();
    bare.hold()();
    await settle();
    expect(bare.state()).toBe('unavailable');
    bare.close();
  });

  it('asks no more once closed', async () => {
    screen.hold();
    await settle();
    screen.close();
    await show('visible');
    expect(wakeLock.live()).toBe(0);
    expect(wakeLock.given).toHaveLength(1);
  });
});

it('the fake keeps to the port', () => {
  const fake = makeTurnedScreen();
  const seen: ReturnType<ScreenAwake['state']>[] = [];
  fake.onState((state) => seen.push(state));
  const first = fake.hold();
  const second = fake.hold();
  first();
  first();
  expect(fake.holders()).toBe(1);
  fake.become('lost');
  fake.become('held');
  second();
  expect(seen).toEqual(['held', 'lost', 'held', 'lost']);
  expect(makeTurnedScreen('unavailable').state()).toBe('unavailable');
});
