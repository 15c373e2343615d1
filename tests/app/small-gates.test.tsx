import { cleanup, render, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { App } from '../../src/app/App.tsx';
import { openHouse } from '../../src/app/open-house.ts';
import { makeFakeWorld } from '../fakes/world.ts';
import { tap } from '../screens/parts/touching.ts';

vi.mock('../../src/screens/start/Start.tsx', () => ({
  default: (props: Record<'onKitchen' | 'onBook' | 'onCircle' | 'onLog', () => void>) => (
    <p>
      <button onClick={() => props.onKitchen()}>to kitchen</button>
      <button onClick={() => props.onBook()}>to book</button>
      <button onClick={() => props.onCircle()}>to circle</button>
      <button onClick={() => props.onLog()}>to log</button>
    </p>
  ),
}));
vi.mock('../../src/screens/kitchen/Kitchen.tsx', () => ({ default: () => <p>is kitchen</p> }));
vi.mock('../../src/screens/book/Book.tsx', () => ({ default: () => <p>is book</p> }));
vi.mock('../../src/screens/circle/Circle.tsx', () => ({ default: () => <p>is circle</p> }));
vi.mock('../../src/screens/log/Log.tsx', () => ({ default: () => <p>is log</p> }));

beforeEach(() => vi.stubGlobal('fetch', async () => new Response('{}')));
afterEach(() => {
  vi.restoreAllMocks();
  cleanup();
  vi.unstubAllGlobals();
});

/** A page is compiled at its first use. */
const SLOW = { timeout: 10_000 };
const RIGHT = ['bowl', 'barley', 'pears', 'green', 'train'];
const PAGES = ['kitchen', 'book', 'circle', 'log'] as const;

const opened = async (small: 'off' | '4-6') => {
  let now = 50_000;
  vi.spyOn(performance, 'now').mockImplementation(() => now);
  const house = await createRoot(() => openHouse(makeFakeWorld()));
  house.choose({ small });
  render(() => <App house={house} />);
  return (el: HTMLElement): void => {
    now += 1_100;
    tap(el);
  };
};

it.each(PAGES)('asks a grown-up before the page %s while small hands help', async (page) => {
  const touch = await opened('4-6');
  const go = async () => (await screen.findByText(`to ${page}`, undefined, SLOW)).click();
  await go();
  await screen.findByRole('heading', { name: 'For a grown-up' }, SLOW);
  expect(screen.queryByText(`is ${page}`)).toBeNull();
  touch(screen.getByRole('button', { name: 'Back' }));
  await go();
  await screen.findByRole('heading', { name: 'For a grown-up' }, SLOW);
  const tiles = [...document.querySelectorAll<HTMLElement>('.sheet .tile')];
  touch(tiles.find((tile) => RIGHT.includes(tile.textContent))!);
  await screen.findByText(`is ${page}`);
});

it.each(PAGES)('opens the page %s at once for a baker', async (page) => {
  await opened('off');
  (await screen.findByText(`to ${page}`, undefined, SLOW)).click();
  await screen.findByText(`is ${page}`, undefined, SLOW);
  expect(screen.queryByRole('heading', { name: 'For a grown-up' })).toBeNull();
});
