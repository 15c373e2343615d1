import { cleanup, screen, within } from '@solidjs/testing-library';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { waitFor } from '../../../src/core/day/waits.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import { EQUIPMENT } from '../../../src/core/kitchen/equipment.ts';
import { recipeBowls, sharesOf } from '../../../src/core/kitchen/split-bowls.ts';
import type { BakeStage } from '../../../src/core/records/stage.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { benchView, type BenchView } from '../../../src/screens/bench/view.ts';
import { focusOn } from '../../../src/screens/focus.ts';
import { bread } from '../day/breads.ts';
import { Hand } from '../../machines/support/hand.ts';
import { stepOn } from '../../machines/support/onward.ts';
import { atBench } from './at-bench.tsx';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const METRIC = { heat: 'C', weight: 'g' } as const;
const hour = (at: number): string => new Date(at).toISOString().slice(11, 16);
const recipeOf = (loaves: number): Recipe =>
  makeRecipe(bread('cherry-hazelnut'), { loaves, piece: 900 }).recipe!;

const see = (hand: Hand): BenchView =>
  benchView(hand.kitchen, focusOn(hand.kitchen, 'a')!, hour, null, METRIC);
/** The first view of each stage, up to the dividing, of a bake of so many loaves. */
const viewsOf = (loaves: number, from: BakeStage = 'mix.weigh') => {
  const hand = new Hand({ wait: waitFor, now: Date.UTC(2031, 4, 3, 6) });
  const ids = Array.from({ length: loaves }, (_, i) => `a${i}`);
  hand.start('a', from, ids, recipeOf(loaves));
  const views = new Map<string, BenchView>();
  for (let steps = 0; hand.stage('a') !== 'shape.preshape'; steps += 1) {
    const view = see(hand);
    if (!views.has(view.stage)) views.set(view.stage, view);
    if (steps > 200) throw new Error(`The way ends at ${hand.stage('a')}.`);
    stepOn(hand, 'a');
  }
  return views;
};

describe('a dough that two bowls take', () => {
  const recipe = recipeOf(6);
  const bowls = recipeBowls(recipe, EQUIPMENT);
  const views = viewsOf(6);

  it('is weighed bowl by bowl: the card, its list and its voice give what each takes', () => {
    expect(bowls).toHaveLength(2);
    const { headline, detail, spoken, lines, slab } = views.get('mix.weigh')!;
    const [flour] = recipe.lines.first;
    const [one, two] = sharesOf(bowls, flour!.item);
    expect(one! + two!).toBeCloseTo(flour!.grams, 6);
    expect(headline).toBe(
      one === two ? `2 × ${one} g ${flour!.name}` : `${one} g + ${two} g ${flour!.name}`,
    );
    expect(detail).toBe('Into 2 bowls. Zero the scale for each.');
    expect(spoken).toMatch(/ grams of [^.]*\. In each of two bowls\./);
    expect(lines).toHaveLength(recipe.lines.first.length);
    for (const { label } of lines) expect(label).toMatch(/^2 × \d|^\d+ g \+ \d/);
    // What is kept is the whole of it, as the machine has always had it.
    expect(slab.deed).toMatchObject({ act: 'answer', value: String(flour!.grams) });
    expect(views.get('mix.salt')!.detail).toBe('Over 2 doughs. Zero the scale for each.');
    for (const { label } of views.get('bulk.scatter')!.lines) expect(label).toMatch(/^2 × |g \+ /);
  });

  it('has the second bowl’s clock told wherever hands go from one to the other', () => {
    for (const stage of ['mix.first', 'mix.work', 'bulk.fold', 'bulk.spread', 'shape.divide']) {
      expect(views.get(stage)!.detail, stage).toMatch(/Bowl 2: 6\u00a0min later\.$/);
      expect(views.get(stage)!.spoken, stage).toMatch(/Bowl 2: six minutes later\.$/);
    }
    for (const stage of ['mix.rest', 'bulk.between', 'bulk.proving']) {
      const { detail, deadline } = views.get(stage)!;
      const later = hour(deadline! + 6 * MINUTE);
      expect(detail, stage).toMatch(new RegExp(`Bowl 2: 6\u00a0min later, at ${later}\\.$`));
    }
    for (const stage of ['mix.weigh', 'mix.temperature', 'bulk.look', 'bulk.roll'])
      expect(views.get(stage)!.detail, stage).not.toContain('Bowl 2');
  });

  it('is told nothing of where one bowl takes it', () => {
    for (const [stage, { detail, spoken, lines }] of viewsOf(2)) {
      const all = [detail, spoken, ...lines.map(({ label }) => label)].join(' ');
      expect(all, stage).not.toMatch(/[Bb]owl 2|bowls|×|min later/);
    }
  });
});

it('is read through with what each bowl takes, on the screen and aloud', async () => {
  const at = await atBench('read.plan', 6);
  const list = await screen.findByRole('list', { name: 'You need' }, { timeout: 10_000 });
  const { recipe } = at.house.kitchen().bakes[at.bake]!.context;
  const { lines } = recipe;
  const shown = within(list).getAllByRole('listitem');
  expect(shown).toHaveLength(lines.first.length + lines.second.length + lines.filling.length);
  for (const one of shown) expect(one.textContent).toMatch(/: (2 × |.* \+ )/);
  expect(screen.getByText(/^Mix 2 bowls of 274\d\sg\. Start them 6\smin apart\./)).toBeTruthy();
  await at.press('Say that again');
  expect(at.said.at(-1)).toMatch(/Mix 2 bowls of 274\d g\. Start them 6\u00a0min apart\./);
}, 20_000);
