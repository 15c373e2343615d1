import { cleanup, render, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import OverAll from '../../../src/app/OverAll.tsx';
import { MINUTE } from '../../../src/core/units.ts';
import { unbroken } from '../../../src/parts/unbroken.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import Bench from '../../../src/screens/bench/Bench.tsx';
import type { House } from '../../../src/screens/house.ts';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { makeHeardSpeaker, type HeardSpeaker } from '../../fakes/heard-speaker.ts';
import { makeFakeWorld, type FakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';

const clock = turnedClock();
let world: FakeWorld;
let house: House;
let bake: string;
let speaker: HeardSpeaker;
const said: string[] = [];

const open = async (from: 'mix.first' | 'bulk.proving'): Promise<void> => {
  serveFormulas();
  said.length = 0;
  speaker = makeHeardSpeaker();
  world = { ...makeFakeWorld(), speaker };
  const opened = await openBaking(world);
  const { say } = opened.house;
  house = {
    ...opened.house,
    say: (words) => {
      said.push(words);
      say(words);
    },
  };
  bake = await opened.begin(from);
  render(() => (
    <PressGround now={clock} firstTouch={() => house.hush()}>
      <Bench
        house={house}
        bake={bake}
        onHome={() => undefined}
        onBake={() => undefined}
        onKitchen={() => undefined}
      />
      <OverAll house={house} />
    </PressGround>
  ));
};
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const turn = (minutes: number): void => {
  world.clock.turn(minutes * MINUTE);
  world.beat();
};
const touch = (el: HTMLElement): void => {
  clock.at += 1_100;
  tap(el);
};
const putOff = (): HTMLElement | null => screen.queryByRole('button', { name: /^In 2 minutes/ });
const snoozes = () => house.records().filter(({ fact }) => fact.kind === 'snoozed');
const press = async (name: RegExp): Promise<void> =>
  touch((await screen.findAllByRole('button', { name }, { timeout: 10_000 })).at(-1)!);

/** The first touch anywhere, which only hushes. */
const hush = async (): Promise<void> => {
  expect(house.ringing()).not.toBeNull();
  const before = house.records().length;
  touch(screen.getAllByRole('heading', { level: 1 }).at(-1)!);
  await vi.waitFor(() => expect(house.ringing()).toBeNull());
  expect(house.records().length - before).toBe(1);
};

const salting = async (): Promise<void> => {
  await open('mix.first');
  await house.take({ kind: 'press', who: bake, act: 'mixed' });
  turn(30);
  expect(house.ringing()).toMatchObject({ stage: 'mix.salt', kind: 'act' });
};

it('is offered once a touch has hushed the call, twice, and the act stays on show', async () => {
  await salting();
  expect(putOff()).toBeNull();
  for (const [left, words] of [
    ['2 left', 'I call again in 2 minutes.'],
    ['1 left', 'I call one last time, in 2 minutes.'],
  ] as const) {
    await hush();
    expect(putOff()?.textContent).toBe(unbroken(`In 2 minutes ${left}`));
    await press(/^In 2 minutes/);
    await vi.waitFor(() => expect(said.at(-1)).toBe(words));
    expect(putOff()).toBeNull();
    const until = house.now() + 2 * MINUTE;
    expect(document.querySelector('.ear')?.textContent).toContain(`Calls at ${house.hour(until)}`);
    expect(screen.getByRole('heading', { level: 1 }).textContent).toMatch(/salt/i);
    turn(1);
    expect(house.ringing()).toBeNull();
    turn(1);
    expect(house.ringing()).toMatchObject({ stage: 'mix.salt' });
    expect(world.sound.ringing()).toHaveLength(1);
    // Known already: what is said is what it still waits for.
    await vi.waitFor(() =>
      expect(speaker.said.at(-1)?.words).toBe('Still waiting: the salt goes in.'),
    );
  }
  await hush();
  expect(putOff()).toBeNull();
  expect(snoozes()).toHaveLength(2);
});

it('put off by mistake is taken back by the control that takes back any press', async () => {
  await salting();
  await hush();
  await press(/^In 2 minutes/);
  await vi.waitFor(() => expect(snoozes()).toHaveLength(1));
  await press(/^Take that back/);
  await vi.waitFor(() => expect(house.ringing()).toMatchObject({ stage: 'mix.salt' }));
  await hush();
  expect(putOff()?.textContent).toContain('2 left');
});

it('arms the sound in the same tap: who wants to be called again wants to hear it', async () => {
  await salting();
  world.sound.become('locked');
  await hush();
  await press(/^In 2 minutes/);
  await vi.waitFor(() => expect(snoozes()).toHaveLength(1));
  expect(house.sound()).toBe('armed');
});

it('is pressed by a key as well, and the slab by a tap while it stands', async () => {
  await salting();
  await hush();
  clock.at += 1_100;
  putOff()!.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
  await vi.waitFor(() => expect(snoozes()).toHaveLength(1));
  turn(2);
  await hush();
  touch(document.querySelector<HTMLElement>('.slab')!);
  await vi.waitFor(() => expect(house.records().at(-1)?.fact).toMatchObject({ item: 'salt' }));
});

it('is never offered for a hot call', async () => {
  await open('bulk.proving');
  const until = house.now() + MINUTE;
  await house.take({ kind: 'timer', timer: 't1', name: 'nuts', until, call: 'hot' });
  turn(1);
  expect(house.ringing()).toMatchObject({ kind: 'hot' });
  await hush();
  expect(screen.queryByRole('dialog', { name: /Nuts/ })).not.toBeNull();
  expect(putOff()).toBeNull();
});

it('puts off a timer of yours: its sheet goes, and comes again when it calls', async () => {
  await open('bulk.proving');
  const until = house.now() + MINUTE;
  await house.take({ kind: 'timer', timer: 't1', name: 'other', until, call: 'act' });
  const dialog = () => screen.queryByRole('dialog', { name: /Something else/ });
  turn(1);
  expect(dialog()).not.toBeNull();
  expect(putOff()).toBeNull();
  touch(dialog()!);
  await vi.waitFor(() => expect(house.ringing()).toBeNull());
  await press(/^In 2 minutes/);
  await vi.waitFor(() => expect(dialog()).toBeNull());
  turn(2);
  expect(dialog()).not.toBeNull();
  expect(house.ringing()).toMatchObject({ who: 'timer' });
});
