import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { MINUTE } from '../../src/core/units.ts';
import { openBaking, serveFormulas } from '../fakes/baking.ts';
import { makeHeardSpeaker } from '../fakes/heard-speaker.ts';
import { makeSilentSound } from '../fakes/silent-sound.ts';
import { makeFakeWorld } from '../fakes/world.ts';

beforeEach(serveFormulas);
afterEach(() => vi.unstubAllGlobals());

/** A browser that sounds from a touch on, from the first word on, or never. */
type Browser = 'asks' | 'allows' | 'never';

/** A kitchen whose salt calls in a page that was opened anew. */
const reloaded = async (browser: Browser, heard: 'yes' | 'sightOnly' | null = null) => {
  const sound = makeSilentSound('locked');
  const speaker = makeHeardSpeaker();
  let touches = 0;
  const world = {
    ...makeFakeWorld(),
    speaker,
    sound: {
      ...sound,
      arm: async () =>
        browser === 'allows' || (browser === 'asks' && touches > 0) ? sound.arm() : sound.state(),
    },
  };
  const { house, begin } = await openBaking(world);
  if (heard !== null) house.equip({ sound: { at: 0, heard } });
  const who = await begin('mix.first');
  await house.take({ kind: 'press', who, act: 'mixed' });
  await vi.waitFor(() => expect(house.unheard()).toBe(false));
  world.clock.turn(30 * MINUTE);
  expect(house.ringing()).toMatchObject({ stage: 'mix.salt' });
  const touch = (): boolean => {
    touches += 1;
    return house.hush();
  };
  const writes = () => house.records().filter(({ fact }) => fact.kind === 'heard').length;
  return { house, world, sound, speaker, touch, writes };
};

it('brings the sound by the first touch and hushes by the second', async () => {
  const { house, world, sound, speaker, touch, writes } = await reloaded('asks');
  await vi.waitFor(() => expect(house.unheard()).toBe(true));
  expect(sound.state()).toBe('locked');
  const said = speaker.said.length;
  expect(touch()).toBe(true);
  await vi.waitFor(() => expect(house.sound()).toBe('armed'));
  expect(house.unheard()).toBe(false);
  await vi.waitFor(() => expect(speaker.said.length).toBeGreaterThan(said));
  expect(speaker.said.at(-1)?.words).toBe('It’s time: the salt goes in.');
  expect([sound.ringing().length, writes()]).toEqual([1, 0]);
  // The other fingers of the same hand are no second touch.
  world.clock.turn(400);
  expect(touch()).toBe(true);
  expect(house.ringing()).not.toBeNull();
  world.clock.turn(700);
  expect(touch()).toBe(true);
  await vi.waitFor(() => expect(house.ringing()).toBeNull());
  expect([sound.ringing().length, writes()]).toEqual([0, 1]);
});

it('sounds at once where the browser lets it, and the first touch hushes', async () => {
  const { house, sound, touch } = await reloaded('allows');
  await vi.waitFor(() => expect(sound.state()).toBe('armed'));
  expect(house.unheard()).toBe(false);
  expect(touch()).toBe(true);
  await vi.waitFor(() => expect(house.ringing()).toBeNull());
});

it('where no touch brings a sound the next one hushes, and later calls go by the first', async () => {
  const { house, world, touch, writes } = await reloaded('never');
  await vi.waitFor(() => expect(house.unheard()).toBe(true));
  expect(touch()).toBe(true);
  expect(writes()).toBe(0);
  world.clock.turn(MINUTE);
  expect(house.unheard()).toBe(false);
  expect(touch()).toBe(true);
  await vi.waitFor(() => expect(writes()).toBe(1));
  const until = world.clock.now() + 10 * MINUTE;
  await house.take({ kind: 'timer', timer: 't', name: 'kettle', until, call: 'act' });
  world.clock.turn(10 * MINUTE);
  expect(house.ringing()?.who).toBe('timer');
  expect(house.unheard()).toBe(false);
  touch();
  await vi.waitFor(() => expect(writes()).toBe(2));
});

it.each([
  ['goes by sight only', 'sightOnly', 1],
  ['heard its calls', 'yes', 0],
] as const)('a kitchen that %s', async (_, heard, written) => {
  const { house, touch, writes } = await reloaded('asks', heard);
  await vi.waitFor(() => expect(house.unheard()).toBe(heard === 'yes'));
  expect(touch()).toBe(true);
  await new Promise((then) => setTimeout(then, 20));
  expect(writes()).toBe(written);
});
