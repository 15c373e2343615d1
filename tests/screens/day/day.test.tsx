import { createSignal } from 'solid-js';
import { cleanup, render, screen, within } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { MINUTE } from '../../../src/core/units.ts';
import type { Draft } from '../../../src/screens/start/draft.ts';
import Start from '../../../src/screens/start/Start.tsx';
import { openBaking } from '../../fakes/baking.ts';
import { onDay } from './on-day.tsx';
import { SATURDAY_NOON } from './saturday.ts';

vi.setConfig({ testTimeout: 40_000 });
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const boxes = (): string[] =>
  within(screen.getByRole('region', { name: /^The day on a tape/ }))
    .getAllByRole('button')
    .map((el) => el.getAttribute('aria-label') ?? '');

it('asks by taps alone, shows the plan as a tape, and takes it by one press', async () => {
  const at = await onDay();
  expect(at.headline()).toBe('Plan a day');
  expect(screen.getByText('Ready when?', { selector: '.slab-then' })).toBeTruthy();
  await at.ask();
  expect(at.headline()).toBe('Ready Sat 12:00');
  expect(boxes().at(0)).toMatch(/^\d\d:\d\d, Feed the levain$/);
  expect(boxes()).toContain('09:45, Mix flour and water');
  await at.press(/^Take it/);
  await vi.waitFor(() => expect(at.house.plan()).not.toBeNull());
  const plan = at.house.plan()!;
  expect(plan.sequence).toBe(1);
  expect(plan.ready).toEqual([{ batch: plan.ask.bakes[0]!.name, at: SATURDAY_NOON }]);
  expect(at.house.records().map(({ fact }) => fact.kind)).toEqual(['plan']);
  expect(at.presses()).toBeLessThanOrEqual(8);
  // It stands now: its page has its first touch.
  await vi.waitFor(() => expect(screen.getByText(/^next: feed the levain, 22:25/)).toBeTruthy());
  await at.press(/^That’s it/);
  expect(at.home()).toBe(1);
});

it('opens on what was gathered elsewhere, and asks for what is measured', async () => {
  const wheat = { formula: 'lane-wheat', loaves: 4, piece: 805, due: SATURDAY_NOON, pins: {} };
  const cherry = { formula: 'cherry-hazelnut', loaves: 2, due: null, pins: {} };
  const at = await onDay({
    asks: { bakes: [wheat, cherry], kitchen: null, away: [], taken: [] },
  });
  expect(at.headline()).toBe('Plan a day');
  expect(
    screen.getByRole('button', { name: /^Lane wheat, 4\s×\s805\sg dough\s*Sat 12:00/ }),
  ).toBeTruthy();
  expect(screen.getByText('Ready when?', { selector: '.slab-then' })).toBeTruthy();
  expect(screen.getByRole('button', { name: /^How warm\D*–/ })).toBeTruthy();
  await at.press(/^Cherry and hazelnut, 2 loaves/);
  await at.press(/^Leave it out/);
  expect(
    screen.getByRole('button', { name: /^How many loaves.\s*4\s×\s805\sg dough/ }),
  ).toBeTruthy();
  await at.press(/^How warm/);
  await at.press(/^22/);
  await at.press(/^Make a plan/);
  await at.press(/^Take it/);
  await vi.waitFor(() => expect(at.house.plan()).not.toBeNull());
  expect(at.house.plan()!.ask.bakes).toMatchObject([{ recipe: { loaves: 4, piece: 805 } }]);
});

it('has the same values in a table, lids and all', async () => {
  const at = await onDay();
  await at.ask();
  await at.press(/^More/);
  await at.press(/^As a table/);
  const rows = within(await screen.findByRole('table'))
    .getAllByRole('row')
    .slice(1);
  const told = rows.map((row) =>
    within(row)
      .getAllByRole('cell')
      .map((el) => el.textContent),
  );
  const names = rows.map((row) => within(row).getByRole('rowheader').textContent);
  expect(names).toContain('Lids off, load 1');
  expect(names.at(-1)).toBe('Ready');
  for (const [time, fine, last] of told.slice(0, -1)) {
    expect(time).toMatch(/^(Thu|Fri|Sat) \d\d:\d\d$/);
    expect(fine).toMatch(/^\d\d:\d\d$/);
    expect(last).toMatch(/^(Thu|Fri|Sat) \d\d:\d\d$/);
  }
});

it('puts a touch to another hour and lets it go, and keeps the plan where that does not fit', async () => {
  const at = await onDay();
  await at.ask();
  await at.press('09:45, Mix flour and water');
  expect(at.headline()).toBe('Mix flour and water, Fri 09:45');
  expect(screen.getByText(/^Fine until Fri \d\d:\d\d\.$/)).toBeTruthy();
  expect(screen.getByText(/^Not after Fri \d\d:\d\d\.$/)).toBeTruthy();
  await at.press(/^15\smin later/);
  expect(at.headline()).toBe('Mix flour and water, Fri 10:00');
  expect(screen.getByText('You set this time.')).toBeTruthy();
  await at.press(/^15\smin earlier/);
  await at.press(/^15\smin earlier/);
  expect(at.headline()).toBe('Mix flour and water, Fri 09:30');
  const { planner } = at.house;
  at.house.planner = () => Promise.reject(new Error('No planner answers.'));
  await at.press(/^Let it move/);
  expect(await screen.findByText('No other plan was found. It keeps its time.')).toBeTruthy();
  expect(at.headline()).toBe('Mix flour and water, Fri 09:30');
  at.house.planner = planner;
  await at.press(/^Let it move/);
  expect(at.headline()).toBe('Mix flour and water, Fri 09:45');
  await at.press(/^That’s it/);
  // Bread that is due at noon is never out of the oven in time from here.
  const last = boxes().find((name) => /Load 1/.test(name))!;
  await at.press(last);
  for (let n = 0; n < 12 && !screen.queryByText(/^Nothing fits with it/); n += 1)
    await at.press(/^15\smin later/);
  expect(screen.getByText(/^Nothing fits with it at Sat \d\d:\d\d\.$/)).toBeTruthy();
  await at.press(/^That’s it/);
  expect(at.headline()).toBe('Ready Sat 12:00');
});

it('asks a plan that stands anew, as the next of its sequence, and gives it up after a second press', async () => {
  const at = await onDay();
  await at.ask();
  await at.press(/^Take it/);
  await vi.waitFor(() => expect(at.house.plan()).not.toBeNull());
  const { id } = at.house.plan()!;
  await at.press(/^Change it/);
  await at.press(/^How many loaves/);
  await at.press(/^One more/);
  await at.press(/^That’s it/);
  await at.press(/^Make a plan/);
  await at.press(/^Take it/);
  await vi.waitFor(() => expect(at.house.plan()!.sequence).toBe(2));
  expect(at.house.plan()!.id).toBe(id);
  expect(at.house.plan()!.ask.bakes[0]!.recipe.loaves).toBe(3);
  await at.press(/^More/);
  await at.press(/^Give it up/);
  await at.press(/^No, keep it/);
  expect(at.house.plan()).not.toBeNull();
  await at.press(/^Give it up/);
  await at.press(/^Yes, give it up/);
  await vi.waitFor(() => expect(at.house.plan()).toBeNull());
  expect(at.home()).toBe(1);
});

it('offers the feed once its hour is near, and begins the planned bake by it', async () => {
  const at = await onDay();
  await at.ask();
  await at.press(/^Take it/);
  await vi.waitFor(() => expect(at.house.plan()).not.toBeNull());
  const feed = at.house.plan()!.touches[0]!;
  at.world.clock.turn(feed.at - 30 * MINUTE - at.house.now());
  at.world.beat();
  await vi.waitFor(() => expect(screen.getByText(/^1:\d+:\d+, ripe about 09:45$/)).toBeTruthy());
  await at.press(/^Feed now/);
  await vi.waitFor(() => expect(at.bakes).toHaveLength(1));
  expect(at.house.plan()!.ask.bakes[0]!.bake).toBe(at.bakes[0]);
});

it('is told on the start page by what comes next, after a reload too', async () => {
  const at = await onDay();
  await at.ask();
  await at.press(/^Take it/);
  await vi.waitFor(() => expect(at.house.plan()).not.toBeNull());
  cleanup();
  const { house } = await openBaking(at.world);
  render(() => (
    <Start
      house={house}
      onBake={() => 0}
      onKitchen={() => 0}
      onDay={() => 0}
      onBook={() => 0}
      onCircle={() => 0}
      onLog={() => undefined}
      chosen={createSignal<Draft | null>(null)}
    />
  ));
  expect(screen.getByRole('button', { name: /^Plan a day/ }).textContent).toMatch(
    /next: feed the levain, 22:25$/,
  );
});
