import { createRoot } from 'solid-js';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { openHouse } from '../../src/app/open-house.ts';
import { HOUR, MINUTE } from '../../src/core/units.ts';
import type { House } from '../../src/screens/house.ts';
import { serveFormulas } from '../fakes/baking.ts';
import { openBaking } from '../fakes/baking.ts';
import { makeHeardSpeaker } from '../fakes/heard-speaker.ts';
import { makeFakeWorld } from '../fakes/world.ts';

beforeEach(() => serveFormulas());
afterEach(() => vi.unstubAllGlobals());

/** Two bakes whose rest after the mix ends in the same second. */
const twoResting = async () => {
  const speaker = makeHeardSpeaker();
  const fake = makeFakeWorld();
  /** How many said or rang at once, at the worst. */
  const most = { speaking: 0, ringing: 0 };
  const world = {
    ...fake,
    speaker: {
      ...speaker,
      say(words: string) {
        const speech = speaker.say(words);
        const now = speaker.said.filter(({ ended }) => ended === 'no').length;
        most.speaking = Math.max(most.speaking, now);
        return speech;
      },
    },
    sound: {
      ...fake.sound,
      ring(...[kind, inMs]: Parameters<typeof fake.sound.ring>) {
        const stop = fake.sound.ring(kind, inMs);
        most.ringing = Math.max(most.ringing, fake.sound.ringing().length);
        return stop;
      },
    },
  };
  const house: House = await createRoot(() => openHouse(world));
  await vi.waitFor(() => expect(house.formulas()).toHaveLength(9), { timeout: 20_000 });
  for (const name of ['Cherry and hazelnut', 'Olive and seed']) {
    const formula = house.formulas().find((found) => found.formula?.name === name)!.formula!;
    await house.begin({ formula, loaves: 2, kitchen: 22, from: 'mix.first' as never });
  }
  for (const who of Object.keys(house.kitchen().bakes)) {
    await house.take({ kind: 'press', who, act: 'mixed' });
  }
  world.clock.turn(30 * MINUTE);
  await vi.waitFor(() => expect(house.kitchen().attention.context.calls).toHaveLength(2));
  return { house, world, most, said: () => speaker.said.at(-1)!.words };
};

it('says both in one sentence, the one that rings first, and the other alone when the first is hushed', async () => {
  const { house, world, most, said } = await twoResting();
  expect(world.sound.ringing()).toHaveLength(1);
  expect(house.ringing()?.who).toBe('bake-1');
  await vi.waitFor(() =>
    expect(said()).toBe('It’s time: the salt goes in, Cherry bake and Olive bake.'),
  );
  expect(house.caption()).toBe(said());
  expect(house.hush()).toBe(true);
  await vi.waitFor(() => expect(house.ringing()?.who).toBe('bake-2'));
  await vi.waitFor(() => expect(said()).toBe('It’s time: the salt goes in, Olive bake.'));
  expect(world.sound.ringing()).toHaveLength(1);
  expect(house.hush()).toBe(true);
  await vi.waitFor(() => expect(house.ringing()).toBeNull());
  expect(world.sound.ringing()).toEqual([]);
  // One voice, one call, from the first press on.
  expect(most).toEqual({ speaking: 1, ringing: 1 });
});

const SALT = 'It’s time: the salt goes in.';
const NUTS = 'Nuts in the oven: time. The tray is hot: dry mitts, children 1 m back.';

/** A dough whose salt calls, and a tray of nuts that calls so long after it, ms. */
const saltAndNuts = async (after: number) => {
  const speaker = makeHeardSpeaker();
  const world = { ...makeFakeWorld(), speaker };
  const { house, begin } = await openBaking(world);
  const who = await begin('mix.first');
  await house.take({ kind: 'press', who, act: 'mixed' });
  const until = house.now() + 30 * MINUTE + after;
  await house.take({ kind: 'timer', timer: 't1', name: 'nuts', until, call: 'hot' });
  /** Turns the clock, and everything that is said of it. */
  const saidAfter = async (ms: number): Promise<string> => {
    const from = speaker.said.length;
    world.clock.turn(ms);
    await vi.waitFor(() => expect(speaker.said.length).toBeGreaterThan(from));
    for (let n = 0; n < 4; n += 1) {
      speaker.finish();
      await new Promise((then) => setTimeout(then, 0));
    }
    return speaker.said
      .slice(from)
      .map(({ words }) => words)
      .join(' ');
  };
  return { house, world, speaker, saidAfter };
};

it('says what is hot first, its caution with it, whichever came first', async () => {
  const { house, world, saidAfter } = await saltAndNuts(0);
  expect(await saidAfter(30 * MINUTE)).toBe(`${NUTS} Then: the salt goes in.`);
  expect(house.ringing()?.kind).toBe('hot');
  expect(world.sound.ringing()).toHaveLength(1);
});

it.each([
  ['a few seconds after another tells both, itself first', 4_000, ' Then: the salt goes in.'],
  ['half a minute after another is told alone', 30_000, ''],
])('a hot call %s', async (_, after, then) => {
  const { saidAfter } = await saltAndNuts(after);
  expect(await saidAfter(30 * MINUTE)).toBe(SALT);
  expect(await saidAfter(after)).toBe(`${NUTS}${then}`);
});

it('after a sleep both are told in one go, the hot one first, however far apart they came', async () => {
  const { world, house, speaker } = await saltAndNuts(10 * MINUTE);
  world.beat();
  const from = speaker.said.length;
  world.clock.sleep(47 * MINUTE);
  world.beat();
  await vi.waitFor(() => expect(speaker.said.length).toBeGreaterThan(from));
  speaker.finish();
  await vi.waitFor(() => expect(speaker.said.at(-1)?.words).toBe('Then: the salt goes in.'));
  expect(speaker.said.slice(from).map(({ words }) => words)).toEqual([
    NUTS,
    'Then: the salt goes in.',
  ]);
  expect(world.sound.ringing()).toHaveLength(1);
  expect(house.ringing()?.kind).toBe('hot');
});

it('one that was hushed meanwhile is not told once more', async () => {
  const { house, saidAfter } = await saltAndNuts(4_000);
  expect(await saidAfter(30 * MINUTE)).toBe(SALT);
  expect(house.hush()).toBe(true);
  await vi.waitFor(() => expect(house.ringing()).toBeNull());
  expect(await saidAfter(4_000)).toBe(NUTS);
});

it('a press that says nothing, taken as a call begins, does not say it twice', async () => {
  const { house, world, speaker } = await saltAndNuts(0);
  const from = speaker.said.length;
  const until = house.now() + HOUR;
  const taken = house.take({ kind: 'timer', timer: 't2', name: 'kettle', until, call: 'hot' });
  world.clock.turn(30 * MINUTE);
  await taken;
  await vi.waitFor(() => expect(speaker.said.length).toBeGreaterThan(from));
  await new Promise((then) => setTimeout(then, 20));
  expect(speaker.said.slice(from).map(({ words }) => words)).toEqual([NUTS]);
});

it('of two that ring the second is said once as the first is hushed', async () => {
  const { house, saidAfter, speaker } = await saltAndNuts(0);
  await saidAfter(30 * MINUTE);
  const from = speaker.said.length;
  expect(house.hush()).toBe(true);
  await vi.waitFor(() => expect(house.ringing()?.stage).toBe('mix.salt'));
  await new Promise((then) => setTimeout(then, 20));
  expect(speaker.said.slice(from).map(({ words }) => words)).toEqual([SALT]);
});
