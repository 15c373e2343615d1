import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { stageOf } from '../../../machines/kitchen/stage-of.ts';
import { atBench, lastFact } from './at-bench.tsx';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const headline = (): string =>
  document.querySelector('.act-headline')?.textContent.replaceAll('\u00a0', ' ') ?? '';
const states = (): (string | null)[] =>
  [...document.querySelectorAll('.lines li')].map((line) => line.getAttribute('data-state'));

it('has each filling ticked by the slab, told aloud, and taken back one at a time', async () => {
  const at = await atBench('bulk.scatter');
  const stage = (): string => stageOf(at.house.kitchen().bakes[at.bake]!);
  const [cherry, hazelnut] = at.house.kitchen().bakes[at.bake]!.context.recipe.lines.filling;
  await screen.findByRole('heading', { level: 1 });
  expect(headline()).toBe(`${cherry!.grams} g dried cherries`);
  expect(states()).toEqual(['now', 'next']);

  await at.press('It’s scattered');
  expect(await lastFact(at, 'press')).toMatchObject({
    act: 'answer',
    item: 'filling:cherry',
    value: String(cherry!.grams),
  });
  await vi.waitFor(() => expect(headline()).toBe(`${hazelnut!.grams} g toasted hazelnuts`));
  expect([states(), stage()]).toEqual([['done', 'now'], 'bulk.scatter']);
  expect(at.said.at(-1)).toMatch(/^[a-z -]+ grams of toasted hazelnuts\.$/);

  await at.press('Take that back');
  await vi.waitFor(() => expect(states()).toEqual(['now', 'next']));
  expect(at.said.at(-1)).toMatch(/^[a-z -]+ grams of dried cherries\. Three centimetres/);

  for (const next of ['toasted hazelnuts', 'Roll the dough up']) {
    await at.press('It’s scattered');
    await vi.waitFor(() => expect(headline()).toContain(next));
  }
  expect(stage()).toBe('bulk.roll');
}, 30_000);
