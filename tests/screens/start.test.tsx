import { cleanup, render, screen } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { bakeLoss } from '../../src/core/formula/bake-loss.ts';
import { lossOf } from '../../src/core/oven/bake-loss-learned.ts';
import { beforeOvenItems } from '../../src/core/records/lists.ts';
import { PressGround } from '../../src/parts/PressGround.tsx';
import type { House } from '../../src/screens/house.ts';
import type { Draft } from '../../src/screens/start/draft.ts';
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

const show = (house: House, chosen = createSignal<Draft | null>(null)): void => {
  render(() => (
    <PressGround now={clock}>
      <Start
        house={house}
        onBake={(id) => begun.push(id)}
        onKitchen={() => undefined}
        onDay={() => undefined}
        onBook={() => undefined}
        onCircle={() => undefined}
        onLog={() => undefined}
        chosen={chosen}
      />
    </PressGround>
  ));
};
const open = async (world: FakeWorld): Promise<House> => {
  const { house } = await openBaking(world);
  show(house);
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

it('is as it was left, once another page has been looked at, and empty after its bake was begun', async () => {
  const { house } = await openBaking(makeFakeWorld());
  const chosen = createSignal<Draft | null>(null);
  show(house, chosen);
  ready();
  press(/^How many loaves/);
  press(/^One more/);
  press(/^That’s it/);
  cleanup();
  show(house, chosen);
  screen.getByRole('button', { name: 'How warm is the kitchen? 22 °C' });
  screen.getByRole('button', { name: /^How many loaves\? 3/ });
  press(/^Start baking/);
  // Its page is a chunk of its own, compiled at its first use.
  await vi.waitFor(() => expect(headline()).toBe('Sound check'), { timeout: 10_000 });
  press(/^Sight only/);
  press(/^Start baking/);
  await vi.waitFor(() => expect(begun).toHaveLength(1));
  expect(chosen[0]()).toBeNull();
});

describe('the first bake of a tablet', () => {
  it('begins by way of the sound check, and is begun by its slab', async () => {
    const house = await open(makeFakeWorld());
    ready();
    expect(screen.getByText('a sound check comes first')).toBeTruthy();
    press(/^Start baking/);
    // Its page is a chunk of its own, compiled at its first use.
    await vi.waitFor(() => expect(headline()).toBe('Sound check'), { timeout: 10_000 });
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
    // Its page is a chunk of its own, compiled at its first use.
    await vi.waitFor(() => expect(headline()).toBe('Sound check'), { timeout: 10_000 });
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
    // Its page is a chunk of its own, compiled at its first use.
    await vi.waitFor(() => expect(headline()).toBe('Sound check'), { timeout: 10_000 });
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

describe('how heavy a baked loaf is', () => {
  const withLoaves = async (...loaves: readonly number[]): Promise<House> => {
    const settings = makeMemorySettings({
      equipment: { sound: { at: Date.UTC(2031, 4, 2), heard: 'sightOnly' } },
    });
    const house = await open({ ...makeFakeWorld(), settings });
    const formula = house.formulas().flatMap((found) => found.formula ?? [])[0]!;
    const bake = (await house.begin({ formula, loaves: 1, kitchen: 22, from: 'oven.queued' }))!;
    const oven = (who: string, act: string, more: object = {}) =>
      house.take({ kind: 'press', who, act, ...more } as never);
    await oven('oven', 'ovenOn', { lanes: ['lane.left'] });
    await oven('oven', 'ovenHot');
    await oven('oven', 'pokeReady');
    for (const item of beforeOvenItems('pot'))
      await oven('oven', 'answer', { item, value: 'ready' });
    await oven('oven', 'scored');
    await oven('oven', 'loaded', { loaves: [`${bake}.1`], lane: 'lane.left' });
    for (const act of ['lidOff', 'colourSeen', 'crustReady', 'unloaded']) {
      await oven('lane.left', act);
    }
    await oven(bake, 'cooled');
    for (const grams of loaves) {
      const reading = { what: 'weight', of: 'loaf', grams } as const;
      await house.take({ kind: 'reading', by: 'hand', bake, reading });
    }
    await oven(bake, 'handedOver');
    await oven(bake, 'ended');
    await oven('oven', 'ovenOff');
    return house;
  };
  const recipeOf = (house: House) => {
    const { fact } = house.records().at(-1)!;
    if (fact.kind !== 'start') throw new Error('No bake was begun.');
    return fact.recipe;
  };
  const key = (text: string): void => {
    for (const digit of text) press(new RegExp(`^${digit}$`));
  };
  const asked = async (): Promise<void> => {
    press(/^How many loaves/);
    await screen.findByRole('button', { name: /^Each loaf, baked/ });
    press(/^Each loaf, baked/);
    await vi.waitFor(() => expect(headline()).toBe('How heavy is a baked loaf?'));
  };

  it('is told beside how many, and asked blank', async () => {
    const house = await withLoaves();
    const { piece } = house.formulas().flatMap((found) => found.formula ?? [])[0]!;
    press(/^How many loaves/);
    const line = await screen.findByRole('button', { name: /^Each loaf, baked/ });
    const baked = Math.round(piece * (1 - bakeLoss(piece)));
    expect(line.textContent).toMatch(new RegExp(`about\\s${baked}\\sg$`));
    press(/^That’s it/);
    await asked();
    expect(screen.getByText('Baking takes about 13 % off')).toBeTruthy();
    key('800');
    expect(screen.getByText(/^918\sg of dough each$/)).toBeTruthy();
    press(/^That’s it/);
    expect(screen.getByRole('button', { name: /^How many loaves/ }).textContent).toMatch(
      /2 of 800\sg$/,
    );
    ready();
    press(/^Start baking/);
    await vi.waitFor(() => expect(begun).toHaveLength(1));
    expect(recipeOf(house)).toMatchObject({ piece: 918, loaves: 2 });
  });

  it('takes more dough where loaves here lose more, and the start pins why', async () => {
    const house = await withLoaves(720, 722);
    const { piece } = house.formulas().flatMap((found) => found.formula ?? [])[0]!;
    await asked();
    const learned = Math.round(
      lossOf(
        piece,
        [720, 722].map((loaf) => ({ dough: piece, loaf })),
      ).mean * 100,
    );
    expect(learned).toBeGreaterThan(15);
    expect(screen.getByText(`Your oven takes ${learned} % off`)).toBeTruthy();
    key('800');
    press(/^That’s it/);
    ready();
    press(/^Start baking/);
    await vi.waitFor(() => expect(begun).toHaveLength(1));
    const { piece: dough } = recipeOf(house);
    expect(dough).toBeGreaterThan(940);
    const { fact } = house.records().at(-1)!;
    expect(fact.results![0]!.weighIns).toHaveLength(2);
  });

  it('is refused where no loaf is so light, and left as in the recipe by one press', async () => {
    const house = await withLoaves();
    await asked();
    key('80');
    expect(screen.getByText('Only 130 to 2100 g here')).toBeTruthy();
    press(/^Clear/);
    key('700');
    press(/^That’s it/);
    press(/^How many loaves/);
    await screen.findByRole('button', { name: /^As in the recipe/ });
    press(/^As in the recipe/);
    press(/^That’s it/);
    ready();
    press(/^Start baking/);
    await vi.waitFor(() => expect(begun).toHaveLength(1));
    const { formula, piece } = recipeOf(house);
    expect(piece).toBe(formula.piece);
  });
});

describe('a first loaf', () => {
  it('is offered where nothing was baked yet, and asks one thing after the other', async () => {
    const house = await open(makeFakeWorld());
    press(/^More$/);
    press(/^My first loaf$/);
    expect(house.ways().learner).toBe('on');
    expect(screen.queryByRole('button', { name: /^How many/ })).toBeNull();
    clock.at += 1_100;
    tap(screen.getAllByRole('button', { name: /^Lane wheat/ })[0]!);
    for (const digit of ['2', '2']) press(new RegExp(`^${digit}$`));
    press(/^That’s it/);
    const start = screen.getByRole('button', { name: /^Start baking/ });
    expect(start.getAttribute('aria-disabled') ?? start.getAttribute('disabled')).toBeNull();
    for (const answer of [/^Which bread\? Lane wheat/, /^How many/, /22 °C/])
      expect(screen.getByRole('button', { name: answer })).toBeTruthy();
  });

  it('is not offered once a bake was begun', async () => {
    const { house, begin } = await openBaking(makeFakeWorld());
    await begin('bulk.proving');
    show(house);
    press(/^More$/);
    expect(screen.queryByRole('button', { name: 'My first loaf' })).toBeNull();
  });
});
