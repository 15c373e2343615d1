import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { MINUTE } from '../../../src/core/units.ts';
import { onBench, salting } from './on-bench.tsx';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const lost = () => screen.queryByRole('button', { name: /^Sound lost: tap here/ });

it('is said where the ear stands, and one tap there arms it again; a gate stays shut', async () => {
  const { world, house, touch } = await onBench('oven.queued');
  await screen.findByRole('heading', { name: /^A grown.up does this/ }, { timeout: 10_000 });
  expect(lost()).toBeNull();
  world.sound.become('lost');
  const rows = house.records().length;
  touch(lost()!);
  await vi.waitFor(() => expect(lost()).toBeNull());
  expect(screen.getByText('Sound is on')).toBeTruthy();
  expect(document.querySelector('.hold')).not.toBeNull();
  expect(house.records()).toHaveLength(rows);
});

it('leaves the call on the screen, rung once, and goes before putting it off', async () => {
  const { world, house, touch } = await salting();
  expect(document.querySelector('.call')?.getAttribute('data-kind')).toBe('act');
  world.sound.become('lost');
  expect(document.querySelector('.call')).not.toBeNull();
  // The first touch hushes, wherever it is.
  touch(lost()!);
  await vi.waitFor(() => expect(house.ringing()).toBeNull());
  expect(house.sound()).toBe('lost');
  expect(screen.queryByRole('button', { name: /^In 2 minutes/ })).toBeNull();
  touch(lost()!);
  await screen.findByRole('button', { name: /^In 2 minutes/ });
  expect(world.sound.rung.filter(({ inMs }) => inMs <= 30 * MINUTE)).toHaveLength(1);
});
