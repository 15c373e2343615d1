import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { atBench, lastFact } from './at-bench.tsx';

vi.setConfig({ testTimeout: 30_000 });

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

/** A reading that moves the hour, taken while something else stands on the screen. */
const measured = async (at: Awaited<ReturnType<typeof atBench>>): Promise<string> => {
  const ends = () => document.querySelector('.times-ends')!.textContent;
  const before = ends();
  const reading = { what: 'doughTemperature', celsius: 29 } as const;
  await at.house.take({ kind: 'reading', by: 'hand', bake: at.bake, reading });
  await lastFact(at, 'reading');
  expect(ends()).not.toBe(before);
  return ends();
};

it('answers stand as they are while the hour moves', async () => {
  const at = await atBench('bulk.proving');
  const tiles = () => [...document.querySelectorAll('.tile')];
  const before = tiles();
  expect(before.length).toBeGreaterThan(0);
  await measured(at);
  expect(tiles()).toEqual(before);
  expect(tiles().every((tile, i) => tile === before[i])).toBe(true);
});

it('kinds of a number that is keyed stand as they are while the hour moves', async () => {
  const at = await atBench('bulk.proving');
  for (const name of ['New reading', '2', '4', '5']) await at.press(name);
  const dough = screen.getByRole('button', { name: /^Dough\s*24.5/ });
  await measured(at);
  expect(screen.getByRole('button', { name: /^Dough\s*24.5/ })).toBe(dough);
});
