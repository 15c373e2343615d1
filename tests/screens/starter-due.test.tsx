import { cleanup, render, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import OverAll from '../../src/app/OverAll.tsx';
import { openHouse } from '../../src/app/open-house.ts';
import { starterWords as words } from '../../src/core/speech/words/starter.ts';
import { DAY, MINUTE } from '../../src/core/units.ts';
import { PressGround } from '../../src/parts/PressGround.tsx';
import { unbroken } from '../../src/parts/unbroken.ts';
import type { House } from '../../src/screens/house.ts';
import { OtherBakes } from '../../src/screens/OtherBakes.tsx';
import type { Other } from '../../src/screens/others.ts';
import { starterIsBeside } from '../../src/screens/starter-due.ts';
import { RECIPE } from '../machines/support/recipe.ts';
import { makeHeardSpeaker, type HeardSpeaker } from '../fakes/heard-speaker.ts';
import { makeFakeWorld, type FakeWorld } from '../fakes/world.ts';
import { tap, turnedClock } from './parts/touching.ts';

let world: FakeWorld;
let speaker: HeardSpeaker;
let house: House;
const clock = turnedClock();

vi.setConfig({ testTimeout: 30_000 });

beforeEach(async () => {
  vi.stubGlobal('fetch', async () => new Response('{}'));
  speaker = makeHeardSpeaker();
  world = { ...makeFakeWorld(), speaker };
  house = await createRoot(() => openHouse(world));
  render(() => (
    <PressGround now={clock} firstTouch={() => house.hush()}>
      <OverAll house={house} />
    </PressGround>
  ));
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const until = (told: () => void) => vi.waitFor(told, { timeout: 20_000 });
const press = async (name: RegExp): Promise<void> => {
  const found = await screen.findByRole('button', { name }, { timeout: 20_000 });
  clock.at += 1_100;
  tap(found);
  await Promise.resolve();
};
const notice = () => screen.queryByRole('alert')?.textContent ?? null;
const turnTo = (at: number): void => {
  world.clock.turn(at - house.now());
  world.beat();
};
const starter = () => house.kitchen().starter;
const START = { kind: 'start', from: 'mix.first', recipe: RECIPE, kitchen: 24 } as const;
const feed = () => house.take({ kind: 'starter', did: 'fed', flour: 2, celsius: 24 });

describe('the starter’s reminder', () => {
  it('rings as a look when it is ripe, is said with its caution, and one press is the feed', async () => {
    await feed();
    const ripe = starter().marks['likely']!;
    turnTo(ripe - MINUTE);
    expect([notice(), house.ringing()]).toEqual([null, null]);
    turnTo(ripe);
    expect(house.ringing()).toMatchObject({ who: 'starter', kind: 'look' });
    // At once: nothing of it may still have to be fetched when it rings.
    expect(notice() ?? '').toContain(unbroken(words.due.ripe));
    await until(() =>
      expect(speaker.said[0]?.words).toBe(`Come and look: the starter. ${words.care}`),
    );
    // The first touch hushes and does nothing else.
    await press(/^See to it/);
    await until(() => expect(house.ringing()).toBeNull());
    expect(screen.queryByRole('dialog')).toBeNull();
    await press(/^See to it/);
    await press(/^1:5:5/);
    await until(() => expect(starter().fed).toMatchObject({ flour: 5, celsius: 24 }));
    expect([notice(), screen.queryByRole('dialog')]).toEqual([null, null]);
    await house.takeBack();
    await until(() => expect(notice()).not.toBeNull());
  });

  it('is put off by two minutes, twice, and told in fewer words as it comes back', async () => {
    await feed();
    turnTo(starter().marks['likely']!);
    for (const left of ['2 left', '1 left']) {
      house.hush();
      await until(() => expect(house.ringing()).toBeNull());
      await press(/^See to it/);
      const again = await screen.findByRole('button', { name: /^In.2.minutes/ });
      expect(again.textContent).toContain(unbroken(left));
      await press(/^In.2.minutes/);
      await until(() => expect(screen.queryByRole('dialog')).toBeNull());
      await until(() => expect(speaker.said.at(-1)?.words).toMatch(/2 minutes/));
      turnTo(house.now() + 2 * MINUTE - 1);
      expect(house.ringing()).toBeNull();
      turnTo(house.now() + 1_001);
      expect(house.ringing()).toMatchObject({ who: 'starter' });
      await until(() => expect(speaker.said.at(-1)?.words).toBe('Still waiting: the starter.'));
    }
    house.hush();
    await until(() => expect(house.ringing()).toBeNull());
    await press(/^See to it/);
    await screen.findByRole('button', { name: /^Remind me tomorrow/ });
    expect(screen.queryByRole('button', { name: /^In.2.minutes/ })).toBeNull();
    await press(/^1:1:1/);
    await until(() => expect(starter().fed?.flour).toBe(1));
  });

  it('goes into the fridge by one press', async () => {
    await feed();
    turnTo(starter().marks['likely']!);
    house.hush();
    await until(() => expect(house.ringing()).toBeNull());
    await press(/^See to it/);
    await press(/^Into the\sfridge/);
    await until(() => expect(starter().put?.where).toBe('fridge'));
    expect(notice()).toBeNull();
  });

  it('lies over no running bake: it stands beside it, where there is room', async () => {
    await house.take({ ...START, bake: 'a', loaves: ['a1'] });
    await feed();
    turnTo(starter().marks['likely']!);
    expect(notice()).toBeNull();
    expect(starterIsBeside(house.kitchen())).toBe(true);
    const beside = (others: readonly Other[]) =>
      render(() => (
        <PressGround now={clock}>
          <OtherBakes house={house} others={others} onBake={() => undefined} />
        </PressGround>
      ));
    const other = { mark: 1, name: 'x', waits: 'x', stage: 'x', at: null, late: false };
    const two = beside(['b', 'c'].map((id) => ({ ...other, id })));
    expect(screen.queryByRole('button', { name: /^Starter/ })).toBeNull();
    two.unmount();
    beside([{ ...other, id: 'b' }]);
    screen.getByRole('button', { name: /^Starter/ });
    house.hush();
    await until(() => expect(house.ringing()).toBeNull());
    await press(/^Starter/);
    await press(/^1:1:1/);
    await until(() => expect(starter().fed?.flour).toBe(1));
    expect(starterIsBeside(house.kitchen())).toBe(false);
  });

  it('stands without a sound after weeks in the fridge, never over a bake, and is put off', async () => {
    await house.take({ kind: 'starter', did: 'put', where: 'fridge' });
    turnTo(house.now() + 14 * DAY);
    await until(() => expect(notice()).toContain(unbroken(words.due.cold)));
    expect([house.ringing(), world.sound.rung, speaker.said]).toEqual([null, [], []]);
    await house.take({ ...START, bake: 'a', loaves: ['a1'] });
    expect(notice()).toBeNull();
    await house.take({ kind: 'press', who: 'a', act: 'ended' });
    await until(() => expect(notice()).not.toBeNull());
    await press(/^See to it/);
    // Nothing is known of the kitchen yet: it is asked first.
    for (const key of [/^2$/, /^1$/, /^That’s it/]) await press(key);
    expect(screen.queryByRole('button', { name: /^Into the\sfridge/ })).toBeNull();
    await press(/^Remind me tomorrow/);
    await until(() => expect(notice()).toBeNull());
    turnTo(house.now() + DAY);
    await until(() => expect(notice()).toContain(unbroken(words.due.cold)));
  });
});
