import { cleanup, render, screen } from '@solidjs/testing-library';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { PressGround } from '../../src/parts/PressGround.tsx';
import type { House } from '../../src/screens/house.ts';
import Start from '../../src/screens/start/Start.tsx';
import { openBaking, serveFormulas } from '../fakes/baking.ts';
import { loadedLater } from '../fakes/loaded-later.ts';
import { makeMemorySettings } from '../fakes/memory-settings.ts';
import { makeFakeWorld, type FakeWorld } from '../fakes/world.ts';
import { tap, turnedClock } from './parts/touching.ts';

let begun: string[];
const clock = turnedClock();

beforeEach(() => {
  begun = [];
  serveFormulas();
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});
afterAll(async () => {
  await loadedLater();
});

const open = async (world: FakeWorld): Promise<House> => {
  const { house } = await openBaking(world);
  render(() => (
    <PressGround now={clock}>
      <Start house={house} onBake={(id) => begun.push(id)} onKitchen={() => undefined} />
    </PressGround>
  ));
  return house;
};
const press = (name: RegExp): void => {
  clock.at += 1_100;
  tap(screen.getByRole('button', { name }));
};
const ready = (): void => {
  press(/^How warm is the kitchen/);
  for (const digit of ['2', '2']) press(new RegExp(`^${digit}$`));
  press(/^That’s it/);
};
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;

describe('the first bake of a tablet', () => {
  it('begins by way of the sound check, and is begun by its slab', async () => {
    const house = await open(makeFakeWorld());
    ready();
    expect(screen.getByText('a sound check comes first')).toBeTruthy();
    press(/^Start baking/);
    await vi.waitFor(() => expect(headline()).toBe('Sound check'));
    expect(house.records()).toEqual([]);
    press(/^Sight only/);
    expect(house.records()).toEqual([]);
    press(/^Start baking/);
    await vi.waitFor(() => expect(begun).toHaveLength(1));
    expect(house.records().map(({ fact }) => fact.kind)).toEqual(['start']);
  });

  it('does not begin where the check is left unanswered', async () => {
    const house = await open(makeFakeWorld());
    ready();
    press(/^Start baking/);
    await vi.waitFor(() => expect(headline()).toBe('Sound check'));
    press(/^Start a bake/);
    expect(headline()).toBe('Start a bake');
    expect(screen.getByText('a sound check comes first')).toBeTruthy();
    expect(house.records()).toEqual([]);
  });
});

describe('no sound check comes first', () => {
  const begins = async (): Promise<void> => {
    ready();
    expect(screen.queryByText('a sound check comes first')).toBeNull();
    press(/^Start baking/);
    await vi.waitFor(() => expect(begun).toHaveLength(1));
  };

  it('where one was made, or sight only was said', async () => {
    const settings = makeMemorySettings({
      equipment: { sound: { at: Date.UTC(2031, 4, 2), heard: 'sightOnly' } },
    });
    await open({ ...makeFakeWorld(), settings });
    await begins();
  });

  it('where a bake was begun before, even one that was taken back', async () => {
    const world = makeFakeWorld();
    const first = await open(world);
    ready();
    press(/^Start baking/);
    await vi.waitFor(() => expect(headline()).toBe('Sound check'));
    press(/^Sight only/);
    press(/^Start baking/);
    await vi.waitFor(() => expect(begun).toHaveLength(1));
    await first.takeBack();
    cleanup();
    begun = [];
    // The same log, and the setting is gone: the bakes themselves tell.
    await open({ ...world, settings: makeMemorySettings() });
    await begins();
  });

  it('in a rehearsal', async () => {
    const world = makeFakeWorld();
    await open({ ...world, clock: { ...world.clock, rate: 60 } });
    await begins();
  });
});
