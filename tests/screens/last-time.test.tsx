import { cleanup, render, screen } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { PressGround } from '../../src/parts/PressGround.tsx';
import ReadThrough from '../../src/screens/bench/ReadThrough.tsx';
import type { House } from '../../src/screens/house.ts';
import type { Draft } from '../../src/screens/start/draft.ts';
import Start from '../../src/screens/start/Start.tsx';
import { openBaking, serveFormulas } from '../fakes/baking.ts';
import { loadedLater } from '../fakes/loaded-later.ts';
import { makeFakeWorld } from '../fakes/world.ts';
import { tap, turnedClock } from './parts/touching.ts';

const clock = turnedClock();
beforeEach(() => serveFormulas());
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});
afterAll(async () => {
  await loadedLater();
});

const OWN = 'The bench was cold by the window, so next time on the shelf by the stove.';

/** A house whose first bread was baked once and noted so. */
const baked = async (text: string): Promise<House> => {
  const { house, begin } = await openBaking(makeFakeWorld());
  const who = await begin('cool.note');
  await house.take({ kind: 'press', who, act: 'noted', text });
  return house;
};
const atStart = (house: House): void =>
  void render(() => (
    <PressGround now={clock}>
      <Start
        house={house}
        onBake={() => undefined}
        onKitchen={() => undefined}
        onDay={() => undefined}
        onBook={() => undefined}
        onCircle={() => undefined}
        onLog={() => undefined}
        chosen={createSignal<Draft | null>(null)}
      />
    </PressGround>
  ));
const choose = (bread: string): void => {
  for (const name of [/^Which bread/, new RegExp(`^${bread}`)]) {
    clock.at += 1_100;
    tap(screen.getByRole('button', { name }));
  }
};
const breads = (house: House): readonly string[] =>
  house.formulas().flatMap(({ formula }) => formula?.name ?? []);
/** What stands over the questions, line by line. */
const told = (): readonly string[] =>
  [...document.querySelectorAll('.start-last p')].map((line) => line.textContent);

describe('the start page', () => {
  it('tells what the chosen bread’s last bake left, and nothing of it before one is chosen', async () => {
    const house = await baked('under');
    const all = breads(house);
    atStart(house);
    expect(told()).toEqual([]);
    choose(all[0]!);
    await vi.waitFor(() =>
      expect(told()).toEqual(['Last time it was under. This time wait for the dome.']),
    );
    // Its heading is there still, for ears.
    expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('Start a bake');
    choose(all.at(-1)!);
    expect(told()).toEqual([]);
  });

  it('tells in one line what to do, and the starter under it, where that is told too', async () => {
    const house = await baked('under');
    await house.take({ kind: 'starter', did: 'put', where: 'fridge' });
    atStart(house);
    expect(screen.getByText(/^Your starter is in the fridge/).className).toBe('act-detail');
    choose(breads(house)[0]!);
    await vi.waitFor(() =>
      expect(told()).toEqual([
        'This time wait for the dome.',
        'Your starter is in the fridge: the levain’s feed wakes it.',
      ]),
    );
    expect(document.querySelectorAll('.act-detail')).toHaveLength(0);
  });

  it('shows the first of the baker’s own words, whole words only', async () => {
    const house = await baked(OWN);
    atStart(house);
    choose(breads(house)[0]!);
    await vi.waitFor(() => expect(told()).toHaveLength(1));
    const [line = ''] = told();
    expect(line).toMatch(/^Last time: “The bench was .*…”$/);
    expect(line.length).toBeLessThanOrEqual(67);
    expect(OWN.startsWith(`${line.slice(12, -2)} `)).toBe(true);
  });
});

describe('the read-through', () => {
  const readThrough = async (text: string): Promise<string | undefined> => {
    const house = await baked(text);
    const formula = house.formulas().flatMap((found) => found.formula ?? [])[0]!;
    const bake = await house.begin({ formula, loaves: 2, kitchen: 22, from: 'read.plan' });
    render(() => <ReadThrough house={house} bake={bake!} />);
    return document.querySelector('.through-last')?.textContent;
  };

  it('shows it whole, own words too', async () => {
    expect(await readThrough('pale')).toBe(
      'Last time the crust was too pale. This time bake it five to ten minutes longer.',
    );
    cleanup();
    expect(await readThrough(OWN)).toBe(`Last time: “${OWN}”`);
  });

  it('has no line of it where nothing was noted', async () => {
    expect(await readThrough('')).toBeUndefined();
    expect(screen.getAllByRole('listitem').length).toBeGreaterThan(3);
  });
});
