import { cleanup, render, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openHouse } from '../../src/app/open-house.ts';
import { DAY, HOUR } from '../../src/core/units.ts';
import { PressGround } from '../../src/parts/PressGround.tsx';
import type { House } from '../../src/screens/house.ts';
import Kitchen from '../../src/screens/kitchen/Kitchen.tsx';
import { makeFakeWorld, type FakeWorld } from '../fakes/world.ts';
import { tap, turnedClock } from './parts/touching.ts';

let world: FakeWorld;
let house: House;
let said: string[];
const clock = turnedClock();

beforeEach(async () => {
  vi.stubGlobal('fetch', async () => new Response('{}'));
  world = makeFakeWorld();
  const real = await createRoot(() => openHouse(world));
  said = [];
  house = { ...real, say: (words) => void said.push(words) };
  render(() => (
    <PressGround now={clock}>
      <Kitchen house={house} fromBench={false} onHome={() => undefined} />
    </PressGround>
  ));
  press(/^Starter/);
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const press = (name: RegExp): void => {
  clock.at += 1_100;
  tap(screen.getByRole('button', { name }));
};
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;
const detail = () => document.querySelector('.act-detail')?.textContent;
const care = () => document.querySelector('.act-care')?.textContent;
const starter = () => house.kitchen().starter;
/** What is pressed is first judged, by models that are loaded with the first press, and written. */
const until = (told: () => void) => vi.waitFor(told, { timeout: 20_000 });
const turn = (ms: number): void => {
  world.clock.turn(ms);
  world.beat();
};
describe('the starter’s page', () => {
  it('knows nothing at first, and says so', () => {
    expect([headline(), detail()]).toEqual([
      'Your starter',
      'Say where it stands, or that you fed it.',
    ]);
    for (const label of ['I fed it', 'Where it stands', 'Kept back', 'Its name'])
      expect(screen.getByRole('button', { name: new RegExp(`^${label}`) }).textContent).toContain(
        'Not said',
      );
    expect(care()).toBe('Pink or orange streaks, or fuzz: throw it all away, no tasting.');
  });

  it('asks the kitchen’s warmth once on a blank pad, then one press is a feed', async () => {
    press(/^I fed it/);
    expect(headline()).toBe('How warm is the kitchen?');
    press(/^2$/);
    press(/^4$/);
    press(/^That’s it/);
    expect(headline()).toBe('How was it fed?');
    expect(screen.getAllByRole('button', { name: /, ripe \d/ })).toHaveLength(4);
    press(/^1:2:2/);
    await until(() => expect(starter().fed).toMatchObject({ flour: 2, celsius: 24 }));
    expect(starter().put?.where).toBe('counter');
    const { earliest, latest, likely } = starter().marks;
    expect(detail()).toBe(`Ripe between ${house.hour(earliest!)} and ${house.hour(latest!)}.`);
    expect(said.at(-1)).toMatch(/^Fed\. It should be ripe at/);
    turn(likely! - house.now() + 1);
    expect(detail()).toContain(`Ripe about ${house.hour(likely!)}. Good until`);
    press(/^Take that back/);
    await until(() => expect(starter().fed).toBeUndefined());
  });

  it('says how long it is good in the fridge, and after weeks how many feeds it wants', async () => {
    press(/^Where it stands/);
    press(/^In the\sfridge/);
    await until(() => expect(starter().put?.where).toBe('fridge'));
    expect(detail()).toContain(`Good there until ${house.date(house.now() + 14 * DAY)}.`);
    turn(9 * DAY);
    expect(detail()).toContain('In the fridge for 9 days.');
    expect(detail()).toContain('One feed on the counter before a bake.');
    turn(21 * DAY);
    expect(detail()).toBe(
      'In the fridge for 30 days: it wants a feed. 3 feeds on the counter before a bake.',
    );
    expect(care()).toMatch(/^So long in the cold: look well first\./);
  });

  it('keeps its controls from second to second: a press under a finger is not made anew', () => {
    const before = screen.getAllByRole('button');
    turn(1_000);
    turn(HOUR);
    expect(screen.getAllByRole('button').map((one, i) => one === before[i])).toEqual(
      before.map(() => true),
    );
  });

  it('keeps its name and what was kept back, in the baker’s units', async () => {
    press(/^Its name/);
    press(/^Rye\sstarter/);
    await until(() => expect(headline()).toBe('Rye starter'));
    press(/^Kept back/);
    press(/^4$/);
    press(/^0$/);
    press(/^That’s it/);
    await until(() => expect(starter().kept?.grams).toBe(40));
    expect(screen.getByRole('button', { name: /^Kept back/ }).textContent).toMatch(/40\sg/);
  });

  it('says what bakes taught of its speed, and forgets it by two taps', async () => {
    press(/^How fast it is/);
    expect(headline()).toBe('Nobody knows its speed yet');
    expect(detail()).toContain('No bake has taught this yet.');
    press(/^That’s it/);
    await house.take({ kind: 'starter', did: 'named', name: 'rye' });
    press(/^How fast it is/);
    press(/^It’s a new starter/);
    expect(headline()).toBe('Forget all about the old one?');
    press(/^Tap here first/);
    press(/^Then tap here/);
    await until(() => expect(starter().renewed).toBeDefined());
    await until(() => expect(headline()).toBe('Your starter'));
  });

  it('tells by two looks after a feed whether it is strong enough, and how sure; never by one', async () => {
    press(/^Is it strong/);
    expect(detail()).toBe('Feed it first, then look twice.');
    expect(screen.queryByRole('button', { name: /^Doubled/ })).toBeNull();
    await house.take({ kind: 'starter', did: 'fed', flour: 1, celsius: 24 });
    expect(detail()).toBe('Look twice after a feed: one look says too little.');
    turn(4.5 * HOUR);
    press(/^Doubled/);
    await until(() => expect(starter().signs).toHaveLength(1));
    expect(headline()).toBe('Is it strong enough?');
    expect(detail()).toContain('one look is not enough.');
    turn(HOUR);
    press(/^Domed/);
    await until(() => expect(headline()).toBe('Strong enough'));
    expect(detail()).toMatch(/^(Nearly sure|Not sure, but likely)\. Use it while it is domed\.$/);
    await until(() => expect(said.at(-1)).toMatch(/^Strong enough\. (Nearly|Not sure)/));
    press(/^That’s it/);
    press(/^How fast it is/);
    expect(detail()).toContain('No bake has taught this yet.');
  });

  it('asks for a further feed and says when it would be ripe, or for several', async () => {
    await house.take({ kind: 'starter', did: 'fed', flour: 1, celsius: 24 });
    press(/^Is it strong/);
    turn(4 * HOUR);
    for (const digit of ['4', '5']) {
      if (digit === '4') press(/^Key in its rise/);
      press(new RegExp(`^${digit}$`));
    }
    press(/^That’s it/);
    await until(() => expect(starter().signs).toEqual([{ at: house.now(), percent: 45 }]));
    turn(2 * HOUR);
    await house.take({ kind: 'starter', did: 'rose', percent: 80 });
    expect(headline()).toBe('Feed it once more');
    expect(detail()).toMatch(/Fed 1:2:2 now: ripe \d\d:\d\d\.$/);
    await house.take({ kind: 'starter', did: 'fed', flour: 1, celsius: 24 });
    turn(6 * HOUR);
    await house.take({ kind: 'starter', did: 'rose', percent: 0 });
    turn(4 * HOUR);
    await house.take({ kind: 'starter', did: 'rose', percent: 5 });
    expect(headline()).toBe('Too weak to bake yet');
  });

  it('uses the last feed’s warmth, and takes another', async () => {
    await house.take({ kind: 'starter', did: 'fed', flour: 1, celsius: 21 });
    turn(5 * HOUR);
    press(/^I fed it/);
    expect(detail()).toMatch(/Kitchen: 21\s°C\./);
    press(/^Kitchen is not 21/);
    press(/^2$/);
    press(/^6$/);
    press(/^That’s it/);
    press(/^1:5:5/);
    await until(() => expect(starter().fed).toMatchObject({ flour: 5, celsius: 26 }));
  });
});
