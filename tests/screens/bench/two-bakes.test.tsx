import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { bulkSigns } from '../../../src/core/speech/words/signs.ts';
import { down, up } from '../parts/touching.ts';
import { atBench, lastFact } from './at-bench.tsx';

/** A loaded machine is long about a dozen presses. */
vi.setConfig({ testTimeout: 30_000 });

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const button = (name: RegExp): Promise<HTMLElement> =>
  screen.findByRole('button', { name }, { timeout: 10_000 });
const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 0));

it('keeps what is typed while another bake is at the front, for its own bake only', async () => {
  const at = await atBench('bulk.proving');
  for (const name of ['New reading', 'Dough temperature', '2', '4']) await at.press(name);
  const other = await at.begin('proof.retard');
  at.show(other);
  await vi.waitFor(() => expect(document.querySelector('.pad, .sheet')).toBeNull());
  expect(screen.getByRole('heading', { level: 1 }).textContent).toMatch(/^Leave the loaves/);
  at.show(at.bake);
  await vi.waitFor(() => expect(document.querySelector('.pad-typed')?.textContent).toBe('24'));
  await at.press('That’s it');
  expect(await lastFact(at, 'reading')).toMatchObject({
    bake: at.bake,
    reading: { what: 'doughTemperature', celsius: 24 },
  });
});

it('names the bake at a gate, with its mark, where more than one runs', async () => {
  const at = await atBench('oven.queued');
  const place = () => document.querySelector('.act .act-place')?.textContent;
  await screen.findByRole('heading', { name: /^A grown.up does this/ }, { timeout: 10_000 });
  expect(place()).toBeUndefined();
  await at.begin('bulk.proving');
  await vi.waitFor(() => expect(place()).toMatch(/^\w/));
  expect(document.querySelector('.act .act-place .bake-mark')).not.toBeNull();
});

it('says whose the next line of a list is, and its end, where more than one runs', async () => {
  const at = await atBench('bulk.look');
  const [first, ...more] = bulkSigns;
  await at.press(first!.slab.label);
  await vi.waitFor(() => expect(at.said.at(-1)).toBe(more[0]!.ask));
  await at.begin('levain.ripening');
  // Its blank does not break: the name is never parted from what it names.
  const named = (words: string): RegExp =>
    new RegExp(`^Cherry bake of [a-z’ ]+\\.\\u00a0${words.replace('?', '\\?')}`);
  for (const [n, { slab }] of more.entries()) {
    await at.press(slab.label);
    const next = named(more[n + 1]?.ask ?? 'List complete.');
    await vi.waitFor(() => expect(at.said.at(-1)).toMatch(next));
  }
});

it('closes an open page of readings over another bake’s call, and has it again at its own', async () => {
  const at = await atBench('bulk.proving');
  for (const name of ['New reading', 'Edge and bubbles', 'Domed']) await at.press(name);
  const other = await at.begin('levain.look');
  at.show(other);
  await vi.waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
  expect(await screen.findByRole('heading', { name: /^What colour/ })).toBeTruthy();
  at.show(at.bake);
  // The half that was given stands: only the bubbles are still asked.
  await at.press('Many');
  expect(await lastFact(at, 'reading')).toMatchObject({
    bake: at.bake,
    reading: { what: 'edge', edge: 'domed', bubbles: 'many' },
  });
});

it('keeps every spot that was taken when the keypad is left with the next one half typed', async () => {
  const at = await atBench('cool.cooling');
  for (const name of ['New reading', 'Inside the loaf', '9', '6', 'One more spot'])
    await at.press(name);
  await lastFact(at, 'reading');
  for (const name of ['9', 'Back to the bench']) await at.press(name);
  expect(at.facts().filter(({ kind }) => kind === 'reading')).toHaveLength(1);
  expect(await lastFact(at, 'reading')).toMatchObject({ reading: { celsius: 96 } });
});

it.each([
  ['the slab', /^Doubled|^Creamy/],
  ['a tile', /^Not sure/],
  ['the third control', /^It’s ready/],
])('takes no press on %s that was meant for another bake', async (_, name) => {
  const at = await atBench('bulk.look');
  await button(name);
  const other = await at.begin('levain.look');
  const before = at.facts().length;

  // The finger is down on the one bake when the other comes under it.
  at.beat();
  down(await button(name));
  at.show(other);
  await screen.findByRole('heading', { name: /^What colour/ });
  up(await button(name));
  await settled();
  expect(at.facts()).toHaveLength(before);

  // It comes down just after the other bake has come.
  at.beat();
  at.show(at.bake);
  await screen.findByRole('heading', { name: /^How far/ });
  const wanted = await button(name);
  down(wanted);
  up(wanted);
  await settled();
  expect(at.facts()).toHaveLength(before);

  // A beat later it is this bake's own press.
  at.beat();
  down(wanted);
  up(wanted);
  await vi.waitFor(() => expect(at.facts()).toHaveLength(before + 1));
  expect(at.facts().at(-1)).toMatchObject({ kind: 'press', who: at.bake });
});

it('says of a bake that is gone to which one it is, and not its act over that', async () => {
  // On a bench it is there long before anyone goes to another bake.
  await import('../../../src/screens/bench/measured-view.ts');
  const at = await atBench('bulk.proving');
  const other = await at.begin('levain.feed');
  await button(/Go there\.$/);
  await at.press(/Go there\.$/);
  await screen.findByRole('heading', { level: 1, name: /starter$/i }, { timeout: 10_000 });
  // The hour at which such a feed is ripe makes what is said of this act fuller.
  const times = () => document.querySelector('.times')?.textContent ?? 'no times';
  await vi.waitFor(() => expect(times()).toMatch(/\d\d:\d\d/), 10_000);
  await settled();
  expect(at.said).toEqual([expect.stringMatching(/^Cherry bake.*: [A-Z].*\.$/)]);
  expect(other).not.toBe(at.bake);
});
