import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { atBench, lastFact, type AtBench } from './at-bench.tsx';

vi.setConfig({ testTimeout: 30_000 });

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const target = (): string =>
  document.querySelector('.target')?.textContent.replaceAll('\u00a0', ' ') ?? 'no target';
const press = async (at: AtBench, ...names: string[]): Promise<void> => {
  for (const name of names) await at.press(name);
};

/** At the line of the water: the flours are in. */
const atWater = async (): Promise<AtBench> => {
  const at = await atBench('mix.weigh');
  const { recipe } = at.house.kitchen().bakes[at.bake]!.context;
  for (const { item } of recipe.lines.first.filter((line) => line.item.startsWith('flour')))
    await at.house.take({ kind: 'press', who: at.bake, act: 'answer', item, value: '1' });
  return at;
};

it('shows the water’s temperature at its line, and why behind one press', async () => {
  const at = await atWater();
  await vi.waitFor(() => expect(target()).toContain('for dough at 25 °C'), 10_000);
  await press(at, 'Why this?');
  const why = await screen.findByRole('dialog', { name: /^Why water at/ }, { timeout: 10_000 });
  expect(why.textContent).toContain('rule of thumb');
  await press(at, 'Back to the bench');
  await vi.waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
});

it('says the water anew once flour was measured, and shows it', async () => {
  const at = await atWater();
  await vi.waitFor(() => expect(target()).toContain('°C'), 10_000);
  const before = target();
  await press(at, 'New reading', 'Flour temperature', '1', '2', 'That’s it');
  expect((await lastFact(at, 'reading')).reading).toMatchObject({ celsius: 12 });
  await vi.waitFor(() => expect(at.said.at(-1)).toMatch(/^The water is now .* degrees\.$/));
  await vi.waitFor(() => expect(target()).not.toBe(before));
});

it('lets the wanted dough temperature be changed for this bake, and takes it back', async () => {
  const at = await atWater();
  await vi.waitFor(() => expect(target()).toContain('for dough at 25 °C'), 10_000);
  const before = target();
  await press(at, 'Why this?', 'Change the wanted 25', '2', '3', 'That’s it');
  expect((await lastFact(at, 'reading')).reading).toEqual({ what: 'wantedDough', celsius: 23 });
  await vi.waitFor(() => expect(target()).toContain('for dough at 23 °C'));
  await vi.waitFor(() => expect(at.said.at(-1)).toMatch(/^The water is now .* degrees\.$/));
  await press(at, 'Why this?');
  const why = await screen.findByRole('dialog', { name: /^Why water at/ });
  expect(why.textContent.replaceAll('\u00a0', ' ')).toContain('23 °C, as you told me');
  await press(at, 'Back to the bench', 'Take that back');
  await lastFact(at, 'takeBack');
  await vi.waitFor(() => expect(target()).toBe(before));
});

it('asks again about a dough hotter than anyone wants it, and keeps it marked', async () => {
  const at = await atWater();
  await press(at, 'Why this?', 'Change the wanted 25', '3', '8', 'That’s it');
  await vi.waitFor(() => expect(at.said.at(-1)).toBe('Odd: 20 to 29 °C is usual.'));
  expect(at.facts().at(-1)?.kind).not.toBe('reading');
  await press(at, 'Keep it');
  const { reading } = await lastFact(at, 'reading');
  expect(reading).toEqual({ what: 'wantedDough', celsius: 38, odd: true });
});

it('says what the dough taught, before what comes next', async () => {
  const at = await atBench('mix.weigh');
  const { recipe } = at.house.kitchen().bakes[at.bake]!.context;
  const who = at.bake;
  for (const { item, grams } of recipe.lines.first)
    await at.house.take({ kind: 'press', who, act: 'answer', item, value: String(grams) });
  await at.house.take({ kind: 'press', who, act: 'mixed' });
  await at.house.take({ kind: 'press', who, act: 'rested' });
  for (const { item, grams } of recipe.lines.second)
    await at.house.take({ kind: 'press', who, act: 'answer', item, value: String(grams) });
  await at.house.take({ kind: 'press', who, act: 'workedIn' });
  await press(at, 'Key it in', '2', '8', 'That’s it');
  const { results } = await lastFact(at, 'reading');
  expect(results?.find(({ mixed }) => mixed)?.mixed?.measured).toBe(28);
  await vi.waitFor(() =>
    expect(at.said.at(-1)).toMatch(
      /^three degrees warmer than reckoned: the next water will be cooler\. /,
    ),
  );
});
