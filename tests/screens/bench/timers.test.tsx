import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import OverAll from '../../../src/app/OverAll.tsx';
import { timer as words, timerWords } from '../../../src/core/speech/words/timers.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { unbroken } from '../../../src/parts/unbroken.ts';
import type { House } from '../../../src/screens/house.ts';
import { onBench, type OnBench } from './on-bench.tsx';

let house: House;
let turn: OnBench['turn'];
let press: OnBench['press'];
let presses: number;

beforeEach(async () => {
  const at = await onBench('shape.divide', { over: (one) => <OverAll house={one} /> });
  ({ house, turn } = at);
  presses = 0;
  press = (name) => {
    presses += 1;
    return at.press(name);
  };
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const set = async (name: RegExp, digits: string): Promise<void> => {
  await press(/^More/);
  await press(/^Timer$/);
  for (const digit of digits) await press(new RegExp(`^${digit}$`));
  await press(name);
  await vi.waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
};
const timers = () => Object.values(house.kitchen().timers);
const OVER = { name: 'Nuts in the oven: time' };

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
  // While it is being written the kitchen stands still.
  await vi.waitFor(() => expect(house.saving()).toBe('saved'));
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
