import { cleanup, screen, within } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { beforeOvenItems } from '../../../src/core/records/lists.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { ANY_POT } from '../../../src/core/kitchen/equipment.ts';
import { queuePage } from '../../../src/core/speech/words/pots-page.ts';
import { mayTurn } from '../../../machines/kitchen/may-turn.ts';
import { onBench, type OnBench } from './on-bench.tsx';

vi.setConfig({ testTimeout: 40_000 });

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const LANES = ['lane.left', 'lane.right'];
const oven = (at: OnBench, act: string, more: object = {}) =>
  at.house.take({ kind: 'press', who: 'oven', act, ...more } as never);

/** Two pots that are hot, two loaves; the first has just been looked at. */
const atPoke = async (): Promise<OnBench> => {
  const at = await onBench('oven.queued', { equip: { pots: [ANY_POT, ANY_POT] } });
  await oven(at, 'ovenOn', { lanes: LANES });
  await oven(at, 'ovenHot');
  return at;
};
const load = async (at: OnBench, lane: string): Promise<void> => {
  await oven(at, 'pokeReady');
  for (const item of beforeOvenItems('pot')) await oven(at, 'answer', { item, value: 'ready' });
  await oven(at, 'scored');
  const [loaf] = at.house.kitchen().oven.context.waiting;
  await oven(at, 'loaded', { loaves: [loaf], lane });
};
const toPots = async (at: OnBench): Promise<void> => {
  await at.press(/^More/);
  await at.press(/^Show the pots/);
  await screen.findByRole('img', { name: /^Pots against time/ }, { timeout: 10_000 });
};

it('shows each pot as a lane, says the chart, and has the same values in a table', async () => {
  const at = await atPoke();
  await load(at, 'lane.left');
  await toPots(at);
  const picture = screen.getByRole('img', { name: /2 pots, 2 to come out/ });
  expect(picture.textContent).toMatch(/Left pot.*Right pot/);
  expect(screen.getByRole('heading', { name: /^Last/ }).textContent).toMatch(
    /^Last loaf out at \d\d:\d\d\. Bag from \d\d:\d\d\.$/,
  );
  await at.press(/^Say this chart/);
  expect(at.said.at(-1)).toMatch(/is when the last loaf is out\. .* is when it may be bagged\.$/);
  await at.press(/^As a table/);
  const table = await screen.findByRole('table');
  const heads = within(table).getAllByRole('columnheader');
  expect(heads.map((el) => el.textContent)).toEqual(['Loaf', 'In', 'Lid off', 'Out']);
  for (const { textContent } of within(table).getAllByRole('cell')) {
    expect(textContent).toMatch(/^\d\d:\d\d$/);
  }
  expect(within(table).getAllByRole('cell')).toHaveLength(6);
});

it('brings no loaf to the blade that nobody has looked at', async () => {
  const at = await atPoke();
  const [looked, other] = at.house.kitchen().oven.context.waiting;
  const first = (loaf: string) => mayTurn(at.house.kitchen(), 'loafFirst', loaf);
  const later = (loaf: string) => mayTurn(at.house.kitchen(), 'loafLater', loaf);
  expect([first(other!), later(looked!)]).toEqual([true, true]);
  await oven(at, 'answer', { item: 'dent', value: 'slow' });
  expect([first(other!), later(looked!), first(looked!), later(other!)]).toEqual([
    false,
    false,
    true,
    true,
  ]);
  await oven(at, 'pokeReady');
  expect(first(other!)).toBe(false);
  await toPots(at);
  await at.press(/^Loaves that wait/);
  await at.press(/^Loaf 2/);
  screen.getByText(queuePage.looked);
  await at.press(/^Bake this first/);
  expect(at.house.kitchen().oven.context.waiting).toEqual([looked, other]);
  for (const item of beforeOvenItems('pot')) await oven(at, 'answer', { item, value: 'ready' });
  expect(first(other!)).toBe(false);
  await oven(at, 'scored');
  expect(first(other!)).toBe(false);
  await oven(at, 'loaded', { loaves: [looked], lane: 'lane.left' });
  expect(later(other!)).toBe(true);
});

it('has a waiting loaf go first, or last, by two taps', async () => {
  const at = await atPoke();
  const waiting = (): readonly string[] => at.house.kitchen().oven.context.waiting;
  const [one, two] = waiting();
  await toPots(at);
  await at.press(/^Loaves that wait/);
  await at.press(/^Loaf 2/);
  await at.press(/^Bake this first/);
  await vi.waitFor(() => expect(waiting()).toEqual([two, one]));
  expect((await screen.findByRole('button', { name: /^Loaf 2/ })).textContent).toContain('first:');
  await at.press(/^Loaf 2/);
  await at.press(/^Leave for later/);
  await vi.waitFor(() => expect(waiting()).toEqual([one, two]));
  const button = await screen.findByRole('button', { name: /^Loaf 2/ });
  expect(button.textContent).toContain('slow, last:');
  await at.house.takeBack();
  await vi.waitFor(() => expect(waiting()).toEqual([two, one]));
});

it('asks once more before a pot is out, refuses the last in words, and takes it back', async () => {
  const at = await atPoke();
  const lanes = () => at.house.kitchen().oven.context.lanes;
  await toPots(at);
  await at.press(/^Stop using a pot/);
  await at.press(/^Right pot is out/);
  expect(screen.getByRole('dialog').textContent).toContain('No more loaves in the right pot?');
  await at.press(/^No, it stays/);
  expect(lanes()).toEqual(LANES);
  await at.press(/^Right pot is out/);
  await at.press(/^Yes, no more/);
  await vi.waitFor(() => expect(lanes()).toEqual(['lane.left']));
  await at.press(/^Stop using a pot/);
  expect(screen.getByRole('dialog').textContent).toContain('This is the last pot. It stays');
  expect(screen.queryByRole('button', { name: /pot is out/ })).toBeNull();
  await at.house.takeBack();
  await vi.waitFor(() => expect(lanes()).toEqual(LANES));
});

it('has what the other pot calls for beside the wait of this one, and the pots one press away', async () => {
  const at = await atPoke();
  await load(at, 'lane.left');
  at.turn(3);
  await load(at, 'lane.right');
  const lines = () => [...document.querySelectorAll('.lines li')].map((el) => el.textContent);
  await vi.waitFor(() => expect(lines()).toHaveLength(1));
  expect(lines()[0]).toMatch(/^Right pot: lid off \d\d:\d\d$/);
  await at.press(/^Show the pots/);
  await screen.findByRole('img', { name: /^Pots against time/ }, { timeout: 10_000 });
});

it('stays open while one act follows another, and yields to what rings', async () => {
  const at = await atPoke();
  await load(at, 'lane.left');
  await toPots(at);
  const picture = () => screen.queryByRole('img', { name: /^Pots against time/ });
  await load(at, 'lane.right');
  await Promise.resolve();
  expect(at.house.ringing()).toBeNull();
  expect(picture()).not.toBeNull();
  at.turn(20);
  expect(at.house.ringing()?.stage).toBe('lift');
  await vi.waitFor(() => expect(picture()).toBeNull());
  expect((await screen.findByRole('heading', { level: 1 })).textContent).toMatch(/^Lift the lid/);
});

it('yields to a timer too, though the act stays the same', async () => {
  const at = await atPoke();
  await load(at, 'lane.left');
  await load(at, 'lane.right');
  const until = at.house.now() + 2 * MINUTE;
  await at.house.take({ kind: 'timer', timer: 't1', name: 'nuts', until, call: 'hot' });
  await toPots(at);
  at.turn(3);
  expect(at.house.ringing()?.who).toBe('timer');
  await vi.waitFor(() =>
    expect(screen.queryByRole('img', { name: /^Pots against time/ })).toBeNull(),
  );
});
