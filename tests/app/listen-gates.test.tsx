import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { OPEN_MS } from '../../machines/listening/listening.ts';
import { EAR_PHRASES, type EarPhrase } from '../../src/core/ear/phrases.ts';
import { down, place } from '../screens/parts/touching.ts';
import { byEar, soon, type ByEar } from './by-ear.tsx';

beforeEach(() => {
  vi.spyOn(Element.prototype, 'getClientRects').mockReturnValue([{}] as never);
});
afterEach(() => {
  vi.useRealTimers();
  cleanup();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const holding = (): HTMLElement | null => document.querySelector('.hold');

/** Whatever is listened for and whatever is not is said, each in an opening of its own. */
const sayAll = async (at: ByEar): Promise<ReadonlySet<EarPhrase>> => {
  const active = new Set<EarPhrase>();
  for (const phrase of EAR_PHRASES) {
    at.wait(OPEN_MS);
    await at.nudge();
    await soon(() => expect(at.house.caption()).toBe(''));
    at.ear.asked?.active.forEach((one) => active.add(one));
    at.say(phrase);
    await new Promise((then) => setTimeout(then, 5));
  }
  return active;
};

it('opens no gate and makes no press behind one, whatever is said', async () => {
  const at = await byEar('oven.queued');
  await screen.findByRole('heading', { name: /^A grown.up does this/ }, { timeout: 10_000 });
  const before = at.facts().length;
  const told: readonly EarPhrase[] = ['lidOff', 'sayAgain', 'longer', 'hush'];
  expect([...(await sayAll(at))].filter((phrase) => !told.includes(phrase))).toEqual([]);
  expect(holding()).not.toBeNull();
  expect(at.facts()).toHaveLength(before);
  // By hand it opens; then too the act itself is a hand's.
  const gate = holding()!;
  place(gate, 880, 240, 376, 536);
  at.clock.at += 1_100;
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  down(gate, { clientX: 1000, clientY: 500 });
  vi.advanceTimersByTime(1_300);
  vi.useRealTimers();
  await soon(() => expect(holding()).toBeNull());
  const active = await sayAll(at);
  expect(active.has('sayAgain')).toBe(true);
  expect([...active].filter((phrase) => !told.includes(phrase))).toEqual([]);
  expect(at.facts()).toHaveLength(before);
}, 60_000);
