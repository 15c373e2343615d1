import { cleanup, render, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { App } from '../../src/app/App.tsx';
import OverAll from '../../src/app/OverAll.tsx';
import { openHouse } from '../../src/app/open-house.ts';
import { MINUTE } from '../../src/core/units.ts';
import { makeFakeWorld } from '../fakes/world.ts';
import { RECIPE } from '../machines/support/recipe.ts';

/** What has been asked for of what shows and says a call. */
const asked = vi.hoisted((): string[] => []);
vi.mock('../../src/screens/bench/Bench.tsx', () => {
  asked.push('bench');
  return { default: () => null };
});
vi.mock('../../src/screens/start/Start.tsx', () => ({ default: () => <p>start</p> }));
vi.mock('../../src/app/say-aloud.ts', () => {
  asked.push('words');
  return { sayAloud: () => undefined };
});
vi.mock('../../src/app/voice.ts', () => {
  asked.push('voice');
  return {
    makeVoice: () => ({ say: () => undefined, hush: () => undefined, done: () => undefined }),
  };
});

beforeEach(() => vi.stubGlobal('fetch', async () => new Response('{}')));
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

it('shows a timer that is over with what lies over all, in the same instant', async () => {
  const world = makeFakeWorld();
  const house = await createRoot(() => openHouse(world));
  const until = house.now() + MINUTE;
  await house.take({ kind: 'timer', timer: 't1', name: 'kettle', until, call: 'act' });
  world.clock.turn(MINUTE);
  world.beat();
  render(() => <OverAll house={house} />);
  expect(screen.getByRole('dialog').textContent).toMatch(/Kettle/);
});

it('has what shows and says a call before it rings, the start on show too', async () => {
  const world = makeFakeWorld();
  const house = await createRoot(() => openHouse(world));
  const { container } = render(() => <App house={house} />);
  await vi.waitFor(() => expect(container.textContent).toContain('start'));
  await vi.waitFor(() => expect(asked.toSorted()).toEqual(['voice', 'words']));
  await house.take({
    kind: 'start',
    from: 'bulk.proving',
    recipe: RECIPE,
    kitchen: 24,
    bake: 'a',
    loaves: ['a1'],
  });
  await vi.waitFor(() => expect(asked.toSorted()).toEqual(['bench', 'voice', 'words']));
  expect([house.ringing(), container.textContent]).toEqual([null, 'start']);
});
