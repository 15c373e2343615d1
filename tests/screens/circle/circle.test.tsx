import { cleanup, fireEvent, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { openHouse } from '../../../src/app/open-house.ts';
import type { House } from '../../../src/screens/house.ts';
import { serveFormulas } from '../../fakes/baking.ts';
import { makeMemoryCircle } from '../../fakes/memory-circle.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';
import { showCircle } from './in-circle.tsx';

const clock = turnedClock();
let rows: ReturnType<typeof makeMemoryCircle>;
let house: House;
let home: number;

beforeEach(async () => {
  serveFormulas();
  rows = makeMemoryCircle();
  home = 0;
  house = await createRoot(() => openHouse(makeFakeWorld({ circle: rows })));
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const show = () => showCircle(house, clock, { onHome: () => (home += 1) });
const press = async (name: RegExp): Promise<void> => {
  const button = await screen.findByRole('button', { name });
  clock.at += 1_100;
  tap(button);
};
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;
const reads = (words: string) => vi.waitFor(() => expect(headline()).toBe(words));
const type = (words: string): void => {
  fireEvent.input(screen.getByRole('textbox'), { target: { value: words } });
};

it('opens on its own page, and goes back to where it came from', async () => {
  show();
  await reads('Circle');
  await press(/^Neighbours/);
  expect(headline()).toBe('Neighbours');
  expect(screen.getByText('Nobody yet. Add the first one.')).toBeTruthy();
  await press(/^Circle|^That’s it/);
  expect(headline()).toBe('Circle');
});

it('says so where it cannot be opened, and leads back', async () => {
  rows.fail('closed');
  show();
  await reads('The circle cannot be opened');
  await press(/^That’s it/);
  expect(home).toBe(1);
});

it('adds somebody by a name, cut to what stands on a press', async () => {
  show();
  await press(/^Neighbours/);
  await press(/^Add one/);
  expect(headline()).toBe('Who has bread of you?');
  expect(screen.getByRole('button', { name: /^That’s it/ }).getAttribute('aria-disabled')).toBe(
    'true',
  );
  type('  B of   the mill ');
  await press(/^That’s it/);
  await reads('Neighbours');
  expect(await screen.findByText('B of the mill')).toBeTruthy();
  expect([...rows.rows.values()].filter(Boolean)).toContainEqual({
    id: expect.any(String) as string,
    name: 'B of the mill',
    watch: [],
  });
});

it('shows no name that was not written, keeps it on the page, and says why', async () => {
  show();
  await press(/^Neighbours/);
  await press(/^Add one/);
  type('B');
  rows.fail('full');
  await press(/^That’s it/);
  await vi.waitFor(() =>
    expect(house.told().map(({ text }) => text)).toContain(
      'The tablet is full. Nothing was changed: make room, then press again.',
    ),
  );
  expect(headline()).toBe('Who has bread of you?');
  expect(screen.getByRole<HTMLInputElement>('textbox').value).toBe('B');
  rows.fail(null);
  await press(/^That’s it/);
  await reads('Neighbours');
  expect(await screen.findByText('B')).toBeTruthy();
});
