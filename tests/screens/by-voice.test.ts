import { describe, expect, it } from 'vitest';
import { metaOf } from '../../machines/kitchen/stage-of.ts';
import { activeOf } from '../../src/core/ear/active.ts';
import { EAR_PHRASES, type EarPhrase } from '../../src/core/ear/phrases.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import type { Hazard } from '../../src/core/records/stage.ts';
import { isByHand, saidFor } from '../../src/screens/bench/by-voice.ts';
import { questionView } from '../../src/screens/bench/question-view.ts';
import { benchView, type BenchView } from '../../src/screens/bench/view.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { Hand } from '../machines/support/hand.ts';
import { stepOn } from '../machines/support/onward.ts';
import { RECIPE, SCOOP, STONE, TIN } from '../machines/support/recipe.ts';

const hour = (at: number) => new Date(at).toISOString().slice(11, 16);

interface Seen {
  readonly view: BenchView;
  readonly hazard: Hazard;
}

/** Every act of a bake from its start until the oven is off again, as its bench shows it. */
const wholeBake = (recipe: Recipe): readonly Seen[] => {
  const hand = new Hand();
  hand.start('a', 'read.plan', ['a1'], recipe);
  const seen: Seen[] = [];
  for (let steps = 0; steps < 300; steps += 1) {
    const focus = focusOn(hand.kitchen, 'a');
    if (focus) {
      const view = benchView(hand.kitchen, focus, hour, questionView, { heat: 'C', weight: 'g' });
      seen.push({ view, hazard: metaOf(focus.machine).hazard ?? 'none' });
    }
    const stage = hand.stage('a');
    if (stage === null && hand.stage('oven') === 'off') return seen;
    if (!stepOn(hand, stage === null || stage === 'oven.queued' ? 'oven' : 'a')) break;
  }
  throw new Error(`The way ends at ${hand.stage('a')}, oven ${hand.stage('oven')}.`);
};

/** What may be said for the presses of an act. */
const saidAt = (view: BenchView): readonly (EarPhrase | undefined)[] => [
  saidFor(view, view.slab.deed, true),
  ...view.tiles.map(({ deed }) => saidFor(view, deed, false)),
  ...(view.ready ? [saidFor(view, view.ready, false)] : []),
];

const BAKES = { pot: RECIPE, stone: STONE, tin: TIN, rye: SCOOP };

describe.each(Object.entries(BAKES))('a whole bake by voice: %s', (_, recipe) => {
  const bake = wholeBake(recipe);
  const hot = bake.filter(({ hazard }) => ['hot', 'blade', 'machine'].includes(hazard));

  it('passes nothing that has a gate, and makes no press behind one', () => {
    expect(new Set(hot.map(({ view }) => view.stage)).size).toBeGreaterThan(4);
    for (const { view } of hot) {
      expect(isByHand(view), view.stage).toBe(true);
      const said = saidAt(view).filter((phrase) => phrase !== undefined);
      expect(
        said.filter((phrase) => phrase !== 'lidOff'),
        view.stage,
      ).toEqual([]);
      const active = activeOf(
        {
          does: new Set(EAR_PHRASES),
          over: false,
          byHand: isByHand(view),
          asksBack: true,
          takesKeys: true,
          runs: true,
          teaches: true,
          learns: true,
        },
        new Set(EAR_PHRASES),
      );
      expect(active, view.stage).toEqual(['lidOff', 'sayAgain', 'longer', 'hush']);
    }
  });

  it('ends no wait, answers no question with “that’s done”, and no bake', () => {
    for (const { view } of bake) {
      const slab = saidFor(view, view.slab.deed, true);
      if (slab !== 'done') continue;
      expect([view.stage, view.deadline], view.stage).toEqual([view.stage, null]);
      expect(view.slab.deed).toMatchObject({ kind: 'press' });
      expect(view.stage).not.toMatch(/look|list|proof\.poke|note/);
    }
  });

  it('does the work of hands in dough', () => {
    const done = bake.filter(({ view }) => saidFor(view, view.slab.deed, true) === 'done');
    const stages = done.map(({ view }) => view.stage);
    expect(stages).toEqual(expect.arrayContaining(['levain.feed', 'mix.weigh', 'mix.first']));
    expect(stages.some((stage) => stage.startsWith('shape.'))).toBe(true);
  });

  it('tells a dent, and what a look came to', () => {
    expect(bake.flatMap(({ view }) => saidAt(view))).toContain('ready');
    const { view: look } = bake.find(({ view }) => view.ready !== null)!;
    for (const act of ['bulkNotYet', 'loafNotYet', 'levainNotYet', 'pokeNotYet'] as const) {
      expect(saidFor(look, { kind: 'press', who: 'a', act }, false)).toBe('notYet');
    }
    for (const act of ['bulkOver', 'loafFlat', 'ended', 'noted'] as const) {
      expect(saidFor(look, { kind: 'press', who: 'a', act }, true)).toBeUndefined();
    }
    const dents = bake.filter(({ view }) => view.headline === 'What does a dent do?');
    for (const { view } of dents)
      expect(saidAt(view)).toEqual(expect.arrayContaining(['springs', 'slowly', 'stays']));
  });
});

it('leaves to a hand what a child is guarded from, and a task at a hot tray', () => {
  const at = (task: string | null, stage = 'bulk.proving', hazard: Hazard = 'none') =>
    isByHand({ task, stage, hazard });
  expect([at('toast'), at('kettle'), at('cut')]).toEqual([true, true, true]);
  expect([at('bench'), at(null), at(null, 'bulk.fold', 'raw')]).toEqual([false, false, false]);
  expect(at(null, 'before')).toBe(true);
});
