import { cleanup, render, screen } from '@solidjs/testing-library';
import { createRoot, createSignal } from 'solid-js';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Call } from '../../machines/attention/attention.ts';
import { openHouse } from '../../src/app/open-house.ts';
import { PressGround } from '../../src/parts/PressGround.tsx';
import type { House } from '../../src/screens/house.ts';
import SoundPage from '../../src/screens/SoundPage.tsx';
import { loadedLater } from '../fakes/loaded-later.ts';
import { makeFakeWorld, type FakeWorld } from '../fakes/world.ts';
import { tap, turnedClock } from './parts/touching.ts';

let world: FakeWorld;
let house: House;
let done: number;
let back: number;
const [ringing, setRinging] = createSignal<Call | null>(null);
const clock = turnedClock();

beforeEach(async () => {
  vi.stubGlobal('fetch', async () => new Response('{}'));
  world = makeFakeWorld();
  const real = await createRoot(() => openHouse(world));
  house = { ...real, ringing };
  [done, back] = [0, 0];
  setRinging(null);
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  render(() => (
    <PressGround now={clock}>
      <SoundPage
        house={house}
        done="Start baking"
        then="you can take it back"
        back="Start a bake"
        onDone={() => (done += 1)}
        onBack={() => (back += 1)}
      />
    </PressGround>
  ));
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
  vi.unstubAllGlobals();
});
afterAll(async () => {
  await loadedLater();
});

const press = (name: RegExp): void => {
  clock.at += 1_100;
  tap(screen.getByRole('button', { name }));
};
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;
const marked = () => document.querySelector('[data-sounds]')?.textContent ?? null;
const rings = () => world.sound.ringing().map(({ kind }) => kind);

describe('the sound check', () => {
  it('plays look, act and hot one at a time after a count of ten, three times, and marks which', () => {
    press(/^Play the calls/);
    vi.advanceTimersByTime(9_990);
    expect([rings(), marked()]).toEqual([[], null]);
    vi.advanceTimersByTime(20);
    for (let round = 0; round < 3; round += 1) {
      for (const [kind, word] of [
        ['look', 'Come and look'],
        ['act', 'It’s time'],
        ['hot', 'Hot: now'],
      ]) {
        expect([rings(), marked()]).toEqual([[kind], word]);
        vi.advanceTimersByTime(4_000);
      }
    }
    expect([rings(), marked()]).toEqual([[], null]);
    expect(world.sound.rung).toHaveLength(9);
    // As a call begins: nothing of its growing louder is given away.
    expect(world.sound.rung.every(({ inMs }) => inMs === 0)).toBe(true);
  });

  it('is done in three presses: played, heard, on; and says what it is not', () => {
    press(/^Play the calls/);
    expect(headline()).toBe('Did you hear all three?');
    expect(screen.getByText(/shut door.*volume/)).toBeTruthy();
    vi.advanceTimersByTime(15_000);
    press(/^I heard them/);
    expect(rings()).toEqual([]);
    expect(headline()).toBe('Heard well');
    expect(screen.getByText(/not an alarm.*second timer/)).toBeTruthy();
    expect(house.equipment().sound).toEqual({ at: house.now(), heard: 'yes' });
    vi.advanceTimersByTime(60_000);
    expect(rings()).toEqual([]);
    press(/^Start baking/);
    expect([done, back]).toEqual([1, 0]);
  });

  it.each([
    ['I heard them', 'Calls reach you there', 'yes'],
    ['I did not', 'Calls may pass you by', 'no'],
    ['Sight only', 'You look for yourself', 'sightOnly'],
  ])('says on the answer what it means: %s, %s', (label, means, heard) => {
    press(/^Play the calls/);
    expect(screen.getByRole('button', { name: new RegExp(`^${label}`) }).textContent).toContain(
      means,
    );
    press(new RegExp(`^${label}`));
    expect(house.equipment().sound?.heard).toBe(heard);
  });

  it('tells what to do about a call that was not heard, and plays them again at once', () => {
    press(/^Play the calls/);
    press(/^I did not/);
    expect(screen.getByText(/^Turn the tablet up or open the door/)).toBeTruthy();
    press(/^Play them again/);
    vi.advanceTimersByTime(10_010);
    expect(rings()).toEqual(['look']);
    press(/^I heard them/);
    expect(house.equipment().sound?.heard).toBe('yes');
  });

  it('takes sight only for an answer without a sound', () => {
    press(/^Sight only/);
    expect(house.equipment().sound?.heard).toBe('sightOnly');
    expect(screen.getByText(/do not count on them/)).toBeTruthy();
    press(/^Start baking/);
    expect([done, world.sound.rung.length]).toEqual([1, 0]);
  });

  it('is silent once it is left, and nothing is kept', () => {
    press(/^Play the calls/);
    vi.advanceTimersByTime(10_010);
    press(/^Start a bake/);
    cleanup();
    vi.advanceTimersByTime(60_000);
    expect(rings()).toEqual([]);
    expect(world.sound.rung).toHaveLength(1);
    expect([back, house.equipment().sound]).toEqual([1, null]);
  });

  it('tests all calls beside the tablet: each once, its name marked and said, then it is over', () => {
    const say = vi.spyOn(house, 'say');
    press(/^Test all calls/);
    expect(screen.getByText(/^Each call, then its name/)).toBeTruthy();
    vi.advanceTimersByTime(500);
    for (const [kind, word] of [
      ['look', 'Come and look'],
      ['act', 'It’s time'],
      ['hot', 'Hot: now'],
    ] as const) {
      expect([rings(), marked(), say.mock.lastCall?.[0]]).toEqual([[kind], word, word]);
      vi.advanceTimersByTime(4_000);
    }
    expect([rings(), marked()]).toEqual([[], null]);
    expect(screen.queryByText(/^Each call, then its name/)).toBeNull();
    vi.advanceTimersByTime(60_000);
    expect(world.sound.rung).toHaveLength(3);
    // It is no answer.
    expect(house.equipment().sound).toBeNull();
  });

  it.each([
    ['a touch anywhere', () => tap(screen.getByRole('heading', { level: 1 }))],
    ['a key', () => void window.dispatchEvent(new KeyboardEvent('keydown', { key: 'a' }))],
    [
      'a call in earnest',
      () => void setRinging({ id: 'a', who: 'a', stage: 'mix.salt', kind: 'act', since: 0 }),
    ],
    ['leaving', () => cleanup()],
  ])('stops its test at %s, the words with it', (_, then) => {
    const say = vi.spyOn(house, 'say');
    press(/^Test all calls/);
    vi.advanceTimersByTime(5_000);
    expect(rings()).toEqual(['act']);
    then();
    expect([rings(), marked(), say.mock.lastCall]).toEqual([[], null, ['']]);
    vi.advanceTimersByTime(60_000);
    expect(world.sound.rung).toHaveLength(2);
  });

  it('gives way to a call in earnest, which is heard alone', () => {
    press(/^Play the calls/);
    vi.advanceTimersByTime(10_010);
    setRinging({ id: 'a', who: 'a', stage: 'mix.salt', kind: 'act', since: 0 });
    expect([rings(), marked()]).toEqual([[], null]);
    vi.advanceTimersByTime(60_000);
    expect(rings()).toEqual([]);
  });

  it('says so where no sound can be made, and then only sight is left', () => {
    press(/^Play the calls/);
    vi.advanceTimersByTime(10_010);
    world.sound.become('locked');
    expect(screen.getByText(/^No sound can be made yet/)).toBeTruthy();
    world.sound.become('unavailable');
    press(/^Play them again/);
    expect(screen.getByText('No sound here')).toBeTruthy();
    vi.advanceTimersByTime(3_000);
    expect(world.sound.rung).toHaveLength(1);
  });
});
