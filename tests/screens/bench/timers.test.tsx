import { cleanup, render, screen } from '@solidjs/testing-library';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import OverAll from '../../../src/app/OverAll.tsx';
import { timer as words, timerWords } from '../../../src/core/speech/en/timers.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import { unbroken } from '../../../src/parts/unbroken.ts';
import Bench from '../../../src/screens/bench/Bench.tsx';
import type { House } from '../../../src/screens/house.ts';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { makeFakeWorld, type FakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';

const clock = turnedClock();
let world: FakeWorld;
let house: House;
let presses: number;

beforeEach(async () => {
  serveFormulas();
  world = makeFakeWorld();
  const opened = await openBaking(world);
  house = opened.house;
  const bake = await opened.begin('shape.divide');
  presses = 0;
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
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const press = async (name: RegExp): Promise<void> => {
  // The pages are chunks of their own, compiled at their first use.
  const found = screen.findAllByRole('button', { name }, { timeout: 10_000 });
  const button = (await found).at(-1)!;
  clock.at += 1_100;
  presses += 1;
  tap(button);
  await Promise.resolve();
};
const set = async (name: RegExp, digits: string): Promise<void> => {
  await press(/^More/);
  await press(/^Timer$/);
  for (const digit of digits) await press(new RegExp(`^${digit}$`));
  await press(name);
  await vi.waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
};
const timers = () => Object.values(house.kitchen().timers);
const OVER = { name: 'Nuts in the oven: time' };
const turn = (minutes: number): void => {
  world.clock.turn(minutes * MINUTE);
  world.beat();
};

it('is set within six presses, shown by its clock time, and stands after a take-back of another', async () => {
  await set(/^Nuts in the oven/, '120');
  expect(presses).toBeLessThanOrEqual(6);
  await vi.waitFor(() => expect(timers()).toHaveLength(1));
  const until = house.now() + 120 * MINUTE;
  expect(timers()[0]).toEqual({ name: 'nuts', until, call: 'hot' });
  const shown = await screen.findByRole('button', { name: /^Timers/ }, { timeout: 10_000 });
  expect(shown.textContent).toBe(`${house.hour(until)} ${timerWords.nuts.short}`);
  await set(/^Kettle/, '3');
  await vi.waitFor(() => expect(timers()).toHaveLength(2));
  await press(/^Take that back/);
  await vi.waitFor(() => expect(timers().map(({ name }) => name)).toEqual(['nuts']));
}, 30_000);

it('starts nothing without minutes', async () => {
  await press(/^More/);
  await press(/^Timer$/);
  await press(/^0$/);
  const other = screen.getByRole('button', { name: /^Something else/ });
  expect(other.getAttribute('aria-disabled')).toBe('true');
  await press(/^Something else/);
  expect(timers()).toEqual([]);
}, 30_000);

it('takes the screen when it is over; one touch hushes, one press stops, a take-back calls again', async () => {
  await set(/^Nuts in the oven/, '10');
  await vi.waitFor(() => expect(timers()).toHaveLength(1));
  turn(10);
  // At once: nothing of it may still have to be fetched when it rings.
  const dialog = screen.getByRole('dialog', OVER);
  expect(dialog.dataset['tone']).toBe('hot');
  expect(dialog.textContent).toContain(unbroken(timerWords.nuts.care!));
  turn(1);
  expect(dialog.textContent).toContain('+1:00');
  expect(house.ringing()).not.toBeNull();
  await press(new RegExp(`^${words.stop}`));
  await vi.waitFor(() => expect(house.ringing()).toBeNull());
  expect(timers()).toHaveLength(1);
  await press(new RegExp(`^${words.stop}`));
  await vi.waitFor(() => expect(timers()).toEqual([]));
  await vi.waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
  expect(house.records().at(-1)!.fact.kind).toBe('timerOff');
  await press(/^Take that back/);
  await screen.findByRole('dialog', OVER, { timeout: 10_000 });
}, 30_000);

it('is stopped before its time from the page of all timers', async () => {
  await set(/^Kettle/, '5');
  await press(/^Timers/);
  await press(/^Stop: Kettle/);
  await vi.waitFor(() => expect(timers()).toEqual([]));
}, 30_000);
