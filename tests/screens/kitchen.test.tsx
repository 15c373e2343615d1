import { cleanup, render, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openHouse } from '../../src/app/open-house.ts';
import { PressGround } from '../../src/parts/PressGround.tsx';
import type { House } from '../../src/screens/house.ts';
import Kitchen from '../../src/screens/kitchen/Kitchen.tsx';
import { makeFakeWorld, type FakeWorld } from '../fakes/world.ts';
import { tap, turnedClock } from './parts/touching.ts';

let world: FakeWorld;
let house: House;
let home: number;
let saved: number;
const clock = turnedClock();

beforeEach(async () => {
  vi.stubGlobal('fetch', async () => new Response('{}'));
  world = makeFakeWorld();
  home = 0;
  saved = 0;
  const real = await createRoot(() => openHouse(world));
  house = { ...real, saveAsFile: () => void (saved += 1) };
  render(() => (
    <PressGround now={clock}>
      <Kitchen house={house} onHome={() => (home += 1)} />
    </PressGround>
  ));
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});
// What a house loads after the first paint comes before the test's end.
afterAll(async () => {
  await import('../../src/core/day/waits.ts');
});

const press = (name: RegExp): void => {
  clock.at += 1_100;
  tap(screen.getByRole('button', { name }));
};
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;

describe('the Kitchen', () => {
  it('sets pots, tins and stone places by single presses', () => {
    press(/^Pots and tins/);
    press(/^One more: Pots/);
    press(/^One more: Tins/);
    press(/^One more: Places/);
    expect(house.equipment()).toMatchObject({ tins: 3, stones: 2 });
    expect(house.equipment().pots).toHaveLength(2);
    press(/^That’s it/);
    expect(screen.getByRole('button', { name: /^Pots and tins/ }).textContent).toContain(
      '2 a load',
    );
    press(/^That’s it/);
    expect(home).toBe(1);
  });

  it('never goes below one pot', () => {
    press(/^Pots and tins/);
    press(/^One less: Pots/);
    expect(house.equipment().pots).toHaveLength(1);
  });

  it('says what clay may not do, and that no pot is left to load hot', () => {
    press(/^Pots and tins/);
    press(/^What are the pots made of/);
    press(/^Pot 1/);
    expect(screen.queryByText(/crack/)).toBeNull();
    press(/^Clay$/);
    expect(house.equipment().pots).toMatchObject([{ material: 'clay' }]);
    expect(screen.getByText(/Cold dough can crack it/)).toBeTruthy();
    press(/^That’s it/);
    press(/^That’s it/);
    expect(screen.getByText('No pot here may be loaded hot.')).toBeTruthy();
  });

  it('plays each call after a count of three, and keeps the one heard worst with its date', () => {
    press(/^Sound check/);
    for (const [kind, heard] of [
      ['look', /^I heard it/],
      ['act', /^Only faintly/],
      ['hot', /^I heard it/],
    ] as const) {
      press(new RegExp(`^Play the ${kind} call`));
      expect(world.sound.ringing()).toMatchObject([{ kind, inMs: 3000 }]);
      press(heard);
      expect(world.sound.ringing()).toEqual([]);
    }
    expect(headline()).toBe('Heard faintly');
    expect(screen.getByText(/Turn the tablet up.*shut door.*not an alarm/)).toBeTruthy();
    expect(house.equipment().sound).toEqual({ at: house.now(), heard: 'faint' });
    press(/^That’s it/);
    expect(screen.getByRole('button', { name: /^Sound check/ }).textContent).toContain(
      `Heard faintly, ${house.date(house.now())}`,
    );
  });

  it('plays one call at a time, again at will, and none once the page is left', () => {
    press(/^Sound check/);
    press(/^Play the look call/);
    press(/^Play it again/);
    expect(world.sound.rung).toHaveLength(2);
    expect(world.sound.ringing()).toHaveLength(1);
    press(/^Kitchen/);
    expect(world.sound.ringing()).toEqual([]);
    expect(house.equipment().sound).toBeNull();
  });

  it('takes sight only for an answer', () => {
    press(/^Sound check/);
    press(/^Sight only/);
    expect(house.equipment().sound?.heard).toBe('sightOnly');
    expect(headline()).toBe('Kitchen');
  });

  it('saves the log in one press, and says in three sentences what a tablet cannot promise', () => {
    press(/^Save as a file/);
    expect(saved).toBe(1);
    press(/^What a tablet cannot promise/);
    expect(screen.getAllByRole('listitem')).toHaveLength(3);
    press(/^That’s it/);
    expect(headline()).toBe('Kitchen');
  });
});
