import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { smallWords } from '../../../src/core/small/small-words.ts';
import type { BakeStage } from '../../../src/core/records/stage.ts';
import { makeSilentSound } from '../../fakes/silent-sound.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { onBench, type OnBench } from '../bench/on-bench.tsx';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const SLOW = { timeout: 10_000 };
const small = () => screen.queryByRole('button', { name: 'Small hands' });
const withChild = async (from: BakeStage, world = makeFakeWorld()): Promise<OnBench> => {
  const at = await onBench(from, { world });
  at.house.choose({ small: '7-9' });
  await screen.findByText('You', undefined, SLOW);
  return at;
};
/** In the baker's view, whatever it has. */
const bakers = () =>
  vi.waitFor(() => expect(screen.queryByRole('button', { name: /^Baker’s view/ })).toBeNull());
const comesBack = async (at: OnBench): Promise<void> => {
  await at.press(/^Small hands$/);
  await screen.findByRole('button', { name: /^Baker’s view/ }, SLOW);
  expect(at.house.ways().small).toBe('7-9');
};

describe('from the baker’s view back to small hands', () => {
  it('is one press, behind a reading as behind “it’s ready now”', async () => {
    const at = await withChild('bulk.proving');
    expect(small()).toBeNull();
    await at.press(/^Baker’s view/);
    await bakers();
    await comesBack(at);
    await at.press(/^Baker’s view/);
    await at.press(/^It’s ready now/);
    await vi.waitFor(() => expect(at.facts().at(-1)?.kind).toBe('press'));
    await comesBack(at);
    await at.press(/^Baker’s view/);
    await at.press(/^More/);
    await screen.findByRole('dialog', { name: 'More' }, SLOW);
    await at.press(/^Back to the bench/);
    await comesBack(at);
    expect(screen.getAllByText('You')).toHaveLength(1);
  }, 30_000);

  it('is one press behind what is measured, and nothing is praised that was not done', async () => {
    const at = await withChild('mix.first');
    const stage = () => at.house.kitchen().bakes[at.bake]!.value;
    const measures = { mix: 'temperature' };
    const slab = () => document.querySelector('.slab')!;
    for (let n = 0; n < 20 && JSON.stringify(stage()) !== JSON.stringify(measures); n += 1) {
      if (at.house.ringing() !== null) at.house.hush();
      const facts = at.facts().length;
      at.touch(slab());
      const came = () => expect(at.facts().length).toBeGreaterThan(facts);
      await vi.waitFor(came, 200).catch(() => at.turn(10));
    }
    expect(stage()).toEqual(measures);
    await screen.findByText(smallWords('7-9', 'mix.temperature').task, undefined, SLOW);
    at.touch(slab());
    await at.press(/^Back to the bench/);
    await at.press(/^Baker’s view/);
    await at.press(/^No probe/);
    await vi.waitFor(() => expect(stage()).not.toEqual(measures));
    await comesBack(at);
    await screen.findByText('You', undefined, SLOW);
    expect(document.body.textContent).not.toContain(smallWords('7-9', 'mix.temperature').praise);
  }, 30_000);

  it('is there for a quarter of an hour, and the ear again behind it', async () => {
    const at = await withChild('bulk.proving');
    await at.press(/^Baker’s view/);
    await vi.waitFor(() => expect(small()).not.toBeNull());
    expect(document.querySelector('.ear')).toBeNull();
    at.turn(14);
    expect(small()).not.toBeNull();
    at.turn(2);
    await vi.waitFor(() => expect(small()).toBeNull());
    expect(document.querySelector('.ear')).not.toBeNull();
  }, 30_000);

  it('is in no ear’s place that has something to tell', async () => {
    const sound = makeSilentSound('armed');
    const at = await withChild('bulk.proving', { ...makeFakeWorld(), sound });
    await at.press(/^Baker’s view/);
    await vi.waitFor(() => expect(small()).not.toBeNull());
    for (const state of ['lost', 'locked', 'unavailable'] as const) {
      sound.become(state);
      await vi.waitFor(() => expect(document.querySelector('.ear'), state).not.toBeNull());
      expect(small(), state).toBeNull();
      sound.become('armed');
      await vi.waitFor(() => expect(small()).not.toBeNull());
    }
  }, 30_000);

  it('is none where the baker’s view was chosen for good, or small hands never were', async () => {
    const at = await withChild('bulk.proving');
    await at.press(/^More/);
    await at.press(/^Small hands/);
    await screen.findByRole('dialog', { name: 'Whose hands help?' }, SLOW);
    await at.press(/^Baker’s view/);
    await vi.waitFor(() => expect(at.house.ways().small).toBe('off'));
    await bakers();
    expect(small()).toBeNull();
    expect(document.querySelector('.ear')).not.toBeNull();
  }, 30_000);
});
