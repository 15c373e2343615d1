import { cleanup, render, screen } from '@solidjs/testing-library';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import Pedal from '../../src/app/Pedal.tsx';
import type { BakeStage } from '../../src/core/records/stage.ts';
import { MINUTE } from '../../src/core/units.ts';
import { PressGround } from '../../src/parts/PressGround.tsx';
import Bench from '../../src/screens/bench/Bench.tsx';
import type { House } from '../../src/screens/house.ts';
import { PedalPage } from '../../src/screens/kitchen/PedalPage.tsx';
import { openBaking, serveFormulas } from '../fakes/baking.ts';
import { makeFakeWorld, type FakeWorld } from '../fakes/world.ts';
import { tap, turnedClock } from '../screens/parts/touching.ts';

const clock = turnedClock();
let handlers: Map<string, (() => void) | null>;
let playing: boolean;
let world: FakeWorld;
let house: House;
const said: string[] = [];

beforeEach(() => {
  handlers = new Map();
  playing = false;
  said.length = 0;
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

const open = async (from: BakeStage, wanted = true): Promise<string> => {
  serveFormulas();
  world = makeFakeWorld();
  const opened = await openBaking(world);
  house = { ...opened.house, say: (words) => void said.push(words) };
  if (wanted) house.equip({ mediaKeys: true });
  const bake = await opened.begin(from);
  render(() => (
    <PressGround now={clock} firstTouch={() => house.hush()}>
      <Bench
        house={house}
        bake={bake}
        onHome={() => undefined}
        onBake={() => undefined}
        onKitchen={() => undefined}
      />
      <Pedal house={house} bake={bake} />
    </PressGround>
  ));
  return bake;
};
const salting = async (wanted = true): Promise<void> => {
  const bake = await open('mix.first', wanted);
  await house.take({ kind: 'press', who: bake, act: 'mixed' });
  world.clock.turn(30 * MINUTE);
  world.beat();
  expect(house.ringing()).not.toBeNull();
};
const facts = () => house.records().map(({ fact }) => fact);
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
  await salting(false);
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
    await salting();
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
  await open('oven.queued');
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
  await salting();
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
  await salting();
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
  house = (await openBaking(makeFakeWorld())).house;
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
