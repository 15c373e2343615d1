import { cleanup, fireEvent, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { openHouse } from '../../../src/app/open-house.ts';
import type { House } from '../../../src/screens/house.ts';
import { serveFormulas } from '../../fakes/baking.ts';
import { makeMemoryCircle } from '../../fakes/memory-circle.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';
import { showCircle } from './in-circle.tsx';

const clock = turnedClock();
let rows: ReturnType<typeof makeMemoryCircle>;
let house: House;
let home: number;

beforeEach(async () => {
  serveFormulas();
  rows = makeMemoryCircle();
  home = 0;
  house = await createRoot(() => openHouse(makeFakeWorld({ circle: rows })));
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const show = () => showCircle(house, clock, { onHome: () => (home += 1) });
const press = async (name: RegExp): Promise<void> => {
  const button = await screen.findByRole('button', { name });
  clock.at += 1_100;
  tap(button);
};
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;
const reads = (words: string) => vi.waitFor(() => expect(headline()).toBe(words));
const type = (words: string): void => {
  fireEvent.input(screen.getByRole('textbox'), { target: { value: words } });
};

it('opens on its own page, and goes back to where it came from', async () => {
  show();
  await reads('Circle');
  await press(/^Neighbours/);
  expect(headline()).toBe('Neighbours');
  expect(screen.getByText('Nobody yet. Add the first one.')).toBeTruthy();
  await press(/^That’s it/);
  expect(headline()).toBe('Circle');
  await press(/^Start a bake/);
  expect(home).toBe(1);
});

it('says so where it cannot be opened, and leads back', async () => {
  rows.fail('closed');
  show();
  await reads('The circle cannot be opened');
  await press(/^That’s it/);
  expect(home).toBe(1);
});

it('adds somebody by a name, cut to what stands on a press', async () => {
  show();
  await press(/^Neighbours/);
  await press(/^Add one/);
  expect(headline()).toBe('Who gets your bread?');
  expect(screen.getByRole('button', { name: /^That’s it/ }).getAttribute('aria-disabled')).toBe(
    'true',
  );
  type('  B of   the mill ');
  await press(/^That’s it/);
  await reads('Neighbours');
  expect(await screen.findByText('B of the mill')).toBeTruthy();
  expect([...rows.rows.values()].filter(Boolean)).toContainEqual({
    id: expect.any(String) as string,
    name: 'B of the mill',
    watch: [],
  });
});

it('tells a name apart that somebody has already, and says so while it is typed', async () => {
  rows = makeMemoryCircle([['neighbours:b', { id: 'b', name: 'B', watch: [] }]]);
  house = await createRoot(() => openHouse(makeFakeWorld({ circle: rows })));
  show();
  await press(/^Neighbours/);
  await press(/^Add one/);
  type('b');
  expect(screen.getByText('There is a b already. This one is written as b 2.')).toBeTruthy();
  type('c');
  expect(screen.queryByText(/There is a/)).toBeNull();
  type(' b ');
  await press(/^That’s it/);
  await reads('Neighbours');
  expect(await screen.findByRole('button', { name: 'b 2' })).toBeTruthy();
});

it('shows no name that was not written, keeps it on the page, and says why', async () => {
  show();
  await press(/^Neighbours/);
  await press(/^Add one/);
  type('B');
  rows.fail('full');
  await press(/^That’s it/);
  await vi.waitFor(() =>
    expect(house.told().map(({ text }) => text)).toContain(
      'The tablet is full. Nothing was changed: make room, then press again.',
    ),
  );
  expect(headline()).toBe('Who gets your bread?');
  expect(screen.getByRole<HTMLInputElement>('textbox').value).toBe('B');
  rows.fail(null);
  await press(/^That’s it/);
  await reads('Neighbours');
  expect(await screen.findByText('B')).toBeTruthy();
});

const ZANZIBAR = { id: 'z', name: 'Zanzibar', watch: ['sesame'] };
const ordered = (id: string, day: string) => ({
  ...{ id, who: 'z', day, at: null, paid: false, handed: null, made: 0, standing: null },
  lines: [{ bread: 'lane-wheat', count: 2, grams: null, cut: false }],
});
const withZanzibar = async (): Promise<void> => {
  rows = makeMemoryCircle([
    ['neighbours:z', ZANZIBAR],
    ['orders:past', ordered('past', '2031-04-26')],
    ['orders:next', ordered('next', '2031-05-10')],
  ]);
  house = await createRoot(() => openHouse(makeFakeWorld({ circle: rows })));
  show();
  await press(/^Neighbours/);
  await press(/^Zanzibar/);
  await reads('Zanzibar');
};

it('keeps what somebody must not eat, by the names a packet has, and takes the last press back', async () => {
  await withZanzibar();
  await press(/^Must not eat/);
  expect(headline()).toBe('What Zanzibar must not eat');
  const chosen = (name: RegExp) =>
    screen.getByRole('button', { name }).getAttribute('aria-pressed');
  expect(chosen(/^sesame/)).toBe('true');
  expect(chosen(/^milk/)).toBe('false');
  await press(/^milk/);
  await vi.waitFor(() => expect(chosen(/^milk/)).toBe('true'));
  await press(/^tree nuts/);
  expect(headline()).toBe('Which nuts?');
  await press(/^All tree nuts/);
  await vi.waitFor(() => expect(chosen(/^All tree nuts/)).toBe('true'));
  await press(/^walnut/);
  await vi.waitFor(() => expect(chosen(/^walnut/)).toBe('true'));
  expect(chosen(/^All tree nuts/)).toBe('false');
  await press(/^That’s it/);
  await press(/^That’s it/);
  const watch = () => (rows.rows.get('neighbours:z') as typeof ZANZIBAR).watch;
  expect(watch()).toEqual(['sesame', 'milk', 'tree nuts (walnut)']);
  await press(/^Take that back/);
  await vi.waitFor(() => expect(watch()).toEqual(['sesame', 'milk', 'tree nuts']));
});

it('renames, and a name that is nobody’s else stays as it is typed', async () => {
  await withZanzibar();
  await press(/^Name/);
  type('Zanzibar');
  expect(screen.queryByText(/There is a/)).toBeNull();
  type('B');
  await press(/^That’s it/);
  await reads('B');
  await press(/^Take that back/);
  await reads('Zanzibar');
});

it('erases for good by two taps far apart: no row and nothing to take back holds the name', async () => {
  await withZanzibar();
  await press(/^Name/);
  type('Zanzibar 2');
  await press(/^That’s it/);
  await reads('Zanzibar 2');
  expect(JSON.stringify([...rows.rows])).toContain('"Zanzibar"');
  await press(/^Erase for good/);
  expect(headline()).toBe('Erase Zanzibar 2 for good?');
  expect(screen.getByText('Coming orders go too: 1. Standing orders: 0.')).toBeTruthy();
  await press(/^Keep them/);
  await press(/^Erase for good/);
  await press(/^Tap here first/);
  expect(JSON.stringify([...rows.rows])).toContain('Zanzibar');
  await press(/^Then tap here/);
  await reads('Neighbours');
  expect(JSON.stringify([...rows.rows])).not.toMatch(/Zanzibar|sesame/);
  expect([...rows.rows.keys()]).toEqual(['orders:past', 'gone:z']);
  expect(screen.queryByRole('button', { name: /^Take that back/ })).toBeNull();
  expect(JSON.stringify(house.records())).not.toContain('Zanzibar');
});

it('shows the next days with their loaves, each one press from what is ordered', async () => {
  rows = makeMemoryCircle([
    ['neighbours:z', ZANZIBAR],
    ...['03', '10', '17', '24', '31'].map(
      (date) => [`orders:o${date}`, ordered(`o${date}`, `2031-05-${date}`)] as const,
    ),
    ['orders:gone', ordered('gone', '2031-05-02')],
  ]);
  house = await createRoot(() => openHouse(makeFakeWorld({ circle: rows })));
  show();
  expect(await screen.findByRole('button', { name: /^Sat 3 May ?2 loaves$/ })).toBeTruthy();
  const days = () =>
    screen.getAllByRole('button', { name: /2 loaves$/ }).map(({ textContent }) => textContent);
  expect(days()).toHaveLength(3);
  await press(/^Later days/);
  expect(days()).toHaveLength(2);
  await press(/^The next days/);
  await press(/^Sat 10 May/);
  expect(headline()).toBe('Bake 2 loaves for Sat 10 May');
  expect(screen.getByRole('button', { name: /^Zanzibar/ })).toBeTruthy();
  await press(/^Circle/);
  expect(headline()).toBe('Circle');
  await press(/^New order/);
  expect(headline()).toBe('Bake on which day?');
});

it('says what to begin with where nothing is there, and writes nothing in a page that only shows', async () => {
  show();
  const first = 'Add your neighbours first. Their orders then show here.';
  expect(await screen.findByText(first)).toBeTruthy();
  cleanup();
  house = await createRoot(() => openHouse(makeFakeWorld({ circle: rows, holds: false })));
  show();
  await press(/^Neighbours/);
  await press(/^Add one/);
  type('B');
  await press(/^That’s it/);
  await vi.waitFor(() =>
    expect(house.told().map(({ text }) => text)).toContain(
      'This page only shows the kitchen. Change it in the other one.',
    ),
  );
  expect(rows.rows.size).toBe(0);
});
