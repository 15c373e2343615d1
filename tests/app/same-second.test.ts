import { readFileSync } from 'node:fs';
import { createRoot } from 'solid-js';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { openHouse } from '../../src/app/open-house.ts';
import { MINUTE } from '../../src/core/units.ts';
import type { House } from '../../src/screens/house.ts';
import { makeHeardSpeaker } from '../fakes/heard-speaker.ts';
import { makeFakeWorld } from '../fakes/world.ts';

beforeEach(() =>
  vi.stubGlobal(
    'fetch',
    async (path: string) => new Response(readFileSync(`assets${path}`, 'utf8')),
  ),
);
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
  await vi.waitFor(() => expect(house.formulas()).toHaveLength(6), { timeout: 20_000 });
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

it('says the call that rings and is on show, and the other one when the first is hushed', async () => {
  const { house, world, most, said } = await twoResting();
  expect(world.sound.ringing()).toHaveLength(1);
  expect(house.ringing()?.who).toBe('bake-1');
  await vi.waitFor(() => expect(said()).toBe('It’s time: the salt goes in, Cherry bake.'));
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
