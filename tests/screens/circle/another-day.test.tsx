import { cleanup, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { openHouse } from '../../../src/app/open-house.ts';
import { serveFormulas } from '../../fakes/baking.ts';
import { makeMemoryCircle } from '../../fakes/memory-circle.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';
import { showCircle } from './in-circle.tsx';

const clock = turnedClock();

beforeEach(() => serveFormulas());
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const press = async (name: RegExp): Promise<void> => {
  const button = await screen.findByRole('button', { name });
  clock.at += 1_100;
  tap(button);
};
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;

it('leads to a day in pages of six, and from that day back to the Circle by one press', async () => {
  const house = await createRoot(() =>
    openHouse(makeFakeWorld({ circle: makeMemoryCircle(), at: Date.UTC(2031, 4, 3, 12) })),
  );
  showCircle(house, clock);
  await press(/^New order/);
  expect(headline()).toBe('Bake on which day?');
  expect(screen.getByRole('button', { name: /^Today/ })).toBeTruthy();
  await press(/^Later days/);
  expect(screen.queryByRole('button', { name: /^Today/ })).toBeNull();
  await press(/^Sat\s*10 May/);
  expect(headline()).toBe('Bake for Sat 10 May');
  await press(/^Circle/);
  expect(headline()).toBe('Circle');
});
