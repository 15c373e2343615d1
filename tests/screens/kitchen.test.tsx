import { cleanup, render, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openHouse } from '../../src/app/open-house.ts';
import { PressGround } from '../../src/parts/PressGround.tsx';
import type { House } from '../../src/screens/house.ts';
import Kitchen from '../../src/screens/kitchen/Kitchen.tsx';
import { loadedLater } from '../fakes/loaded-later.ts';
import { makeFakeWorld, type FakeWorld } from '../fakes/world.ts';
import { tap, turnedClock } from './parts/touching.ts';

let world: FakeWorld;
let house: House;
let home: number;
const clock = turnedClock();

beforeEach(async () => {
  vi.stubGlobal('fetch', async () => new Response('{}'));
  world = makeFakeWorld();
  home = 0;
  house = await createRoot(() => openHouse(world));
  render(() => (
    <PressGround now={clock}>
      <Kitchen house={house} fromBench={false} onHome={() => (home += 1)} />
    </PressGround>
  ));
});
afterEach(() => {
  cleanup();
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

  it('is told how high it lies, blank the sea, and says what that does to a core', () => {
    press(/^Oven/);
    expect(screen.getByRole('button', { name: /^Above sea level/ }).textContent).toContain(
      'Sea level',
    );
    expect(screen.queryByText(/Water boils/)).toBeNull();
    press(/^Above sea level/);
    for (const key of '9000') press(new RegExp(`^${key}$`));
    expect(screen.getByText('Only 0 to 5000 m')).toBeTruthy();
    press(/^Clear/);
    for (const key of '1500') press(new RegExp(`^${key}$`));
    press(/^That’s it/);
    expect(house.equipment().height).toBe(1500);
    expect(screen.getByText('Water boils at 95 °C: core from 88 °C.')).toBeTruthy();
    press(/^Above sea level/);
    press(/^Not known/);
    expect(house.equipment().height).toBeNull();
    expect(screen.queryByText(/Water boils/)).toBeNull();
  });

  it('keeps a height keyed in feet in metres', () => {
    house.choose({ heat: 'F' });
    press(/^Oven/);
    press(/^Above sea level/);
    for (const key of '5000') press(new RegExp(`^${key}$`));
    press(/^That’s it/);
    expect(house.equipment().height).toBe(1524);
    expect(screen.getByRole('button', { name: /^Above sea level/ }).textContent).toContain(
      '5000 ft',
    );
    expect(screen.getByText('Water boils at 203 °F: core from 189 °F.')).toBeTruthy();
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
    press(/^Made of/);
    press(/^Clay$/);
    expect(house.equipment().pots).toMatchObject([{ material: 'clay' }]);
    expect(screen.getByText(/Cold dough can crack it/)).toBeTruthy();
    press(/^That’s it/);
    press(/^That’s it/);
    press(/^That’s it/);
    expect(screen.getByText('No pot here may be loaded hot.')).toBeTruthy();
  });

  it('leads to the sound check, and keeps what was heard with its date', () => {
    press(/^This tablet/);
    press(/^Sound check/);
    press(/^Play the calls/);
    press(/^I heard them/);
    press(/^That’s it/);
    expect(screen.getByRole('button', { name: /^Sound check/ }).textContent).toContain(
      `Heard well, ${house.date(house.now())}`,
    );
  });

  it('says in three sentences what a tablet cannot promise', () => {
    press(/^This tablet/);
    press(/^What a tablet cannot promise/);
    expect(screen.getAllByRole('listitem')).toHaveLength(3);
    press(/^That’s it/);
    expect(headline()).toBe('This tablet');
  });

  it('keys in the oven’s heat on a blank pad, and takes it back to not known', () => {
    press(/^Oven/);
    for (const field of ['Highest heat', 'Measured inside', 'Hot through in', 'Parchment takes'])
      expect(screen.getByRole('button', { name: new RegExp(field) }).textContent).toContain(
        'Not said',
      );
    press(/^Highest heat/);
    expect(
      screen.getByLabelText('What is its highest heat?', { selector: 'output' }).textContent,
    ).toBe(' °C');
    for (const digit of ['2', '3', '5']) press(new RegExp(`^${digit}$`));
    press(/^That’s it/);
    expect(house.equipment().oven.most).toBe(235);
    expect(screen.getByRole('button', { name: /^Highest heat/ }).textContent).toMatch(/235\s°C/);
    press(/^Highest heat/);
    press(/^Not known/);
    expect(house.equipment().oven.most).toBeNull();
  });

  it('takes no number that cannot be, and leaves what stood where none is typed', () => {
    house.equip({ fridge: { celsius: 4, holds: null } });
    press(/^Fridge/);
    press(/^How cold/);
    press(/^9$/);
    press(/^9$/);
    press(/^That’s it/);
    expect(headline()).toBe('How cold is the fridge?');
    press(/^Clear$/);
    press(/^That’s it/);
    expect(headline()).toBe('Fridge');
    expect(house.equipment().fridge.celsius).toBe(4);
  });

  it('warns of a fridge over 5 °C, not of one at 5', () => {
    house.equip({ fridge: { celsius: 5, holds: null } });
    press(/^Fridge/);
    expect(screen.queryByText(/food can spoil/)).toBeNull();
    house.equip({ fridge: { celsius: 5.1, holds: null } });
    expect(screen.getByText('Over 5 °C food can spoil: turn it colder.')).toBeTruthy();
  });

  it('keeps the scale’s steps by one press, and says which are rough', () => {
    press(/^Scale/);
    press(/^1\sg$/);
    expect(screen.queryByText(/rough/)).toBeNull();
    press(/^5\sg$/);
    expect(house.equipment().scale).toBe(5);
    expect(screen.getByText('Steps this big are too rough for salt and starter.')).toBeTruthy();
  });

  it('counts whole bowls, and says what one takes', () => {
    press(/^Bowls/);
    expect(screen.getByText('One bowl takes up to 3000 g by hand.')).toBeTruthy();
    press(/^The biggest/);
    press(/^4$/);
    press(/^That’s it/);
    expect(house.equipment().bowls.litres).toBe(4);
    expect(screen.getByText('One bowl takes up to 2000 g by hand.')).toBeTruthy();
    press(/^How many/);
    press(/^1$/);
    press(/^\.$/);
    press(/^5$/);
    press(/^That’s it/);
    expect(headline()).toBe('How many big bowls?');
    expect(house.equipment().bowls.count).toBeNull();
  });

  it('keeps no night until one is chosen, moves its ends, and does away with it', () => {
    press(/^This tablet/);
    expect(screen.getByRole('button', { name: /^Night hours/ }).textContent).toContain(
      'Never quiet',
    );
    press(/^Night hours/);
    expect(screen.getByText(/hot steps, the oven and timers always ring/)).toBeTruthy();
    expect(screen.queryByRole('button', { name: /^Until/ })).toBeNull();
    press(/^Quiet from/);
    press(/^23:00/);
    expect(house.equipment().quiet).toEqual({ from: 1380, to: 360 });
    press(/^That’s it/);
    press(/^Until/);
    press(/^07:00/);
    press(/^That’s it/);
    expect(house.equipment().quiet).toEqual({ from: 1380, to: 420 });
    press(/^That’s it/);
    expect(screen.getByRole('button', { name: /^Night hours/ }).textContent).toContain(
      '23:00 to 07:00',
    );
    press(/^Night hours/);
    press(/^Quiet from/);
    press(/^Never quiet/);
    press(/^That’s it/);
    expect(house.equipment().quiet).toBeNull();
  });

  it('asks for a maker’s word of enamel, not of bare iron, and forgets it with the material', () => {
    press(/^Pots and tins/);
    press(/^What are the pots made of/);
    press(/^Pot 1/);
    press(/^Made of/);
    press(/^Enamel$/);
    press(/^That’s it/);
    press(/^Cold dough, hot pot/);
    press(/^Not\sallowed$/);
    press(/^That’s it/);
    expect(house.equipment().pots).toMatchObject([{ material: 'enamel', cold: false }]);
    press(/^Lid knob/);
    press(/^Plastic$/);
    press(/^That’s it/);
    expect(screen.getByText('Take the knob off before the pot heats.')).toBeTruthy();
    press(/^Made of/);
    press(/^Bare\siron$/);
    press(/^That’s it/);
    expect(house.equipment().pots).toMatchObject([{ material: 'bareIron', cold: null }]);
    expect(screen.queryByRole('button', { name: /^Cold dough, hot pot/ })).toBeNull();
  });
});
