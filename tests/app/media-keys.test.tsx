import { cleanup, render, screen } from '@solidjs/testing-library';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import Pedal from '../../src/app/Pedal.tsx';
import { MINUTE } from '../../src/core/units.ts';
import { PressGround } from '../../src/parts/PressGround.tsx';
import type { House } from '../../src/screens/house.ts';
import { PedalPage } from '../../src/screens/kitchen/PedalPage.tsx';
import { openBaking, serveFormulas } from '../fakes/baking.ts';
import { makeFakeWorld } from '../fakes/world.ts';
import { onBench, salting } from '../screens/bench/on-bench.tsx';
import { tap, turnedClock } from '../screens/parts/touching.ts';

const clock = turnedClock();
let handlers: Map<string, (() => void) | null>;
let playing: boolean;

beforeEach(() => {
  handlers = new Map();
  playing = false;
  const session = {
    playbackState: 'none',
    setActionHandler(action: string, then: (() => void) | null) {
      if (action === 'previoustrack') throw new TypeError('unknown here');
      handlers.set(action, then);
    },
  };
  Object.defineProperty(navigator, 'mediaSession', { configurable: true, value: session });
  vi.stubGlobal(
    'Audio',
    class {
      play = async () => void (playing = true);
      pause = () => void (playing = false);
    },
  );
  vi.spyOn(URL, 'createObjectURL').mockReturnValue('blob:silence');
  vi.spyOn(performance, 'now').mockImplementation(() => clock());
  // What is on the page shows; nothing is laid out here.
  vi.spyOn(Element.prototype, 'getClientRects').mockReturnValue([{}] as never);
});
afterEach(() => {
  cleanup();
  delete (navigator as { mediaSession?: unknown }).mediaSession;
  vi.useRealTimers();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const wanted = {
  clock,
  equip: { mediaKeys: true },
  spoken: false,
  over: (house: House, bake: string) => <Pedal house={house} bake={bake} />,
};
const action = (name: string): void => {
  clock.at += 1_100;
  handlers.get(name)!();
};
/** The key that a browser may send beside the action. */
const key = (name: string): void => {
  for (const type of ['keydown', 'keyup'])
    document.body.dispatchEvent(
      new KeyboardEvent(type, { key: name, bubbles: true, cancelable: true }),
    );
};
const settled = () => new Promise((then) => setTimeout(then, 20));

it('are left alone where nobody wanted them', async () => {
  const { house, facts } = await salting({ ...wanted, equip: {} });
  expect([handlers.size, playing]).toEqual([0, false]);
  key('MediaPlayPause');
  await vi.waitFor(() => expect(house.ringing()).toBeNull());
  clock.at += 1_100;
  const before = facts().length;
  key('MediaPlayPause');
  await settled();
  expect(facts()).toHaveLength(before);
});

it.each(['action first', 'key first'])(
  'silence the call first, then press the slab, once though the browser sends both: %s',
  async (order) => {
    const { facts } = await salting(wanted);
    await vi.waitFor(() => expect(playing).toBe(true));
    const both = async (): Promise<void> => {
      if (order === 'action first') action('pause');
      else clock.at += 1_100;
      key('MediaPlayPause');
      await settled();
      clock.at += 60;
      if (order === 'key first') handlers.get('pause')!();
      await settled();
    };
    const before = facts().length;
    await both();
    expect(facts().slice(before)).toMatchObject([{ kind: 'heard' }]);
    await both();
    expect(facts().slice(before + 1)).toMatchObject([{ kind: 'press', item: 'salt' }]);
  },
);

it('pass no gate, and say so', async () => {
  const { house, facts, said, world } = await onBench('oven.queued', wanted);
  await screen.findByRole('heading', { name: /^A grown.up does this/ }, { timeout: 10_000 });
  const until = house.now() + MINUTE;
  await house.take({ kind: 'timer', timer: 't', name: 'kettle', until, call: 'act' });
  world.clock.turn(MINUTE);
  await vi.waitFor(() => expect(playing).toBe(true));
  action('play');
  await vi.waitFor(() => expect(house.ringing()).toBeNull());
  const before = facts().length;
  action('play');
  await settled();
  expect(said.at(-1)).toBe('This opens by hand only.');
  expect(document.querySelector('.hold')).not.toBeNull();
  expect(facts()).toHaveLength(before);
});

it('say that again, once the call is silenced, and write nothing', async () => {
  const { house, facts, said } = await salting(wanted);
  await vi.waitFor(() => expect(playing).toBe(true));
  action('nexttrack');
  await vi.waitFor(() => expect(house.ringing()).toBeNull());
  const before = facts().length;
  said.length = 0;
  action('nexttrack');
  expect(said).toHaveLength(1);
  expect(said[0]).toMatch(/salt/i);
  expect(facts()).toHaveLength(before);
});

it('are given back a minute after the last sound', async () => {
  const { house } = await salting(wanted);
  await vi.waitFor(() => expect(playing).toBe(true));
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  house.hush();
  await vi.waitFor(() => expect(house.ringing()).toBeNull());
  vi.advanceTimersByTime(59_000);
  expect(handlers.get('pause')).not.toBeNull();
  vi.advanceTimersByTime(2_000);
  expect([...handlers.values(), playing]).toEqual([null, null, null, false]);
});

it('are wanted or not on the page of the pedal', async () => {
  serveFormulas();
  const { house } = await openBaking(makeFakeWorld());
  render(() => (
    <PressGround now={clock}>
      <PedalPage house={house} onBack={() => undefined} />
    </PressGround>
  ));
  const press = () => screen.getByRole('button', { name: /^Headset keys/ });
  expect(press().textContent).toContain('Off');
  clock.at += 1_100;
  tap(press());
  expect(house.equipment().mediaKeys).toBe(true);
  expect(press().textContent).toContain('On');
  expect(screen.getByText('Play: done. Next: repeat. Back: hush.')).toBeTruthy();
});
