import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { atBench, lastFact } from './at-bench.tsx';

/** A loaded machine is long about a dozen presses. */
vi.setConfig({ testTimeout: 30_000 });

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const heading = (name: RegExp): Promise<HTMLElement> =>
  screen.findByRole('heading', { level: 1, name }, { timeout: 10_000 });

it('asks for the oven to be turned off after the last bake was given up, then says it is over', async () => {
  const at = await atBench('oven.queued', 1);
  await at.house.take({ kind: 'press', who: 'oven', act: 'ovenOn' });
  await at.house.take({ kind: 'press', who: at.bake, act: 'ended' });
  expect(await lastFact(at, 'press')).toMatchObject({ act: 'ended' });
  // The gate for grown-ups stands before it, as before every switch of the oven.
  await at.press('First here');
  await at.press('then here');
  expect(await heading(/^Turn the oven off/)).toBeTruthy();
  await at.press('More');
  expect(
    await screen.findByRole('button', { name: /^To the start/ }, { timeout: 10_000 }),
  ).toBeTruthy();
  expect(screen.queryByRole('button', { name: /^End this bake/ })).toBeNull();
  expect(screen.queryByRole('button', { name: /^New reading/ })).toBeNull();
  await at.press('Back to the bench');
  await at.press('Oven is off');
  await vi.waitFor(() =>
    expect(at.facts().at(-1)).toMatchObject({ kind: 'press', who: 'oven', act: 'ovenOff' }),
  );
  expect(await heading(/this bake has ended$/)).toBeTruthy();
});

it('says that a bake was not begun once its start is taken back, and takes back nothing else', async () => {
  const at = await atBench('levain.feed');
  await at.house.takeBack();
  expect(await heading(/^This bake has not begun/)).toBeTruthy();
  expect(screen.queryByRole('button', { name: /^Take that back/ })).toBeNull();
  expect(screen.getByRole('button', { name: /^To the start/ })).toBeTruthy();
});
