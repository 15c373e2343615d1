import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { bulkSigns, levainSigns, loafSigns } from '../../../src/core/speech/words/signs.ts';
import { atBench, type AtBench } from './at-bench.tsx';

vi.setConfig({ testTimeout: 30_000 });

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const ended = (at: AtBench): readonly string[] =>
  at.said.filter((words) => words.includes('List complete.'));
const asks = (words: string): Promise<HTMLElement> =>
  screen.findByRole('heading', { level: 1, name: words }, { timeout: 10_000 });
const says = (at: AtBench, words: RegExp) =>
  vi.waitFor(() => expect(at.said.at(-1) ?? 'nothing').toMatch(words), 10_000);

describe.each([
  ['levain.look', levainSigns],
  ['bulk.look', bulkSigns],
  ['proof.look', loafSigns],
] as const)('the signs of %s', (from, signs) => {
  it('end with the list complete before the verdict, and again once the last is told anew', async () => {
    const at = await atBench(from as never);
    for (const { ask, slab } of signs) {
      await asks(ask);
      expect(ended(at)).toEqual([]);
      await at.press(slab.label);
    }
    await says(at, /^List complete\. [A-Z].*\.$/);
    await at.press('Take that back');
    const last = signs.at(-1)!;
    await asks(last.ask);
    await says(at, new RegExp(last.ask.replace('?', '\\?')));
    await at.press(last.tiles.at(-1)!.label);
    await says(at, /^List complete\. [A-Z].*\.$/);
    expect(ended(at)).toHaveLength(2);
    // What is said again is the verdict alone.
    await at.press('Say that again');
    await says(at, /^(?!List complete)/);
  });
});

it('says no list complete where mould ends it, or hands know better', async () => {
  const at = await atBench('levain.look');
  await asks('What colour is it?');
  await at.press('Pink or mould');
  await screen.findByRole('button', { name: /^End this bake/ }, { timeout: 10_000 });
  expect(ended(at)).toEqual([]);
  cleanup();
  const other = await atBench('bulk.look');
  await asks('How far has it risen?');
  await other.press('Doubled');
  await other.press('It’s ready');
  await vi.waitFor(() => expect(other.facts().at(-1)).toMatchObject({ act: 'bulkReady' }));
  expect(ended(other)).toEqual([]);
});

it('says none after the short look at a loaf that waits for the oven', async () => {
  const at = await atBench('oven.queued');
  for (const act of ['ovenOn', 'ovenHot'] as const)
    await at.house.take({ kind: 'press', who: 'oven', act });
  await asks('How much has it grown?');
  await at.press('Clearly grown');
  await at.press('Comes back slowly');
  await says(at, /^(?!What).*\.$/);
  expect(ended(at)).toEqual([]);
});
