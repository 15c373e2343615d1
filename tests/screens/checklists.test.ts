import { describe, expect, it } from 'vitest';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import { CHECKLISTS, isChecklist } from '../../src/core/records/checklists.ts';
import { beforeOvenItems, closes, ITEMS, LISTS } from '../../src/core/records/lists.ts';
import type { BakeStage, OvenStage } from '../../src/core/records/stage.ts';
import { questions } from '../../src/core/speech/words/questions.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { questionView } from '../../src/screens/bench/question-view.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { Hand } from '../machines/support/hand.ts';
import { walkTo } from '../machines/support/onward.ts';
import { RECIPE, STONE, TIN } from '../machines/support/recipe.ts';

const hour = (at: number) => new Date(at).toISOString().slice(11, 16);
const see = (hand: Hand, kitchen = hand.kitchen) =>
  benchView(kitchen, focusOn(kitchen, 'a')!, hour, questionView, { heat: 'C', weight: 'g' });

/** The kitchen as a page that opens now finds it: the log read again, and what fell due since. */
const reopened = (hand: Hand) =>
  hand.fold.advance(hand.replayed().kitchen, hand.machines, hand.now).kitchen;

/** A hand that stands before the first item of a list. */
const standing = (stage: BakeStage | OvenStage, recipe: Recipe): Hand => {
  const hand = new Hand();
  hand.start('a', 'read.plan', ['a1'], recipe);
  return walkTo(hand, stage.includes('.') ? 'a' : 'oven', stage);
};
const WHERE: readonly (readonly [string, BakeStage | OvenStage, Recipe])[] = [
  ['before the start', 'read.list', RECIPE],
  ['of a levain', 'levain.look', RECIPE],
  ['of a dough', 'bulk.look', RECIPE],
  ['of a cold loaf', 'proof.look', RECIPE],
  ['before the oven, for a pot', 'before', RECIPE],
  ['before the oven, for a stone', 'before', STONE],
  ['before the oven, for a tin', 'before', TIN],
];

it('has five to nine items in every checklist, whatever is baked in', () => {
  const counts = CHECKLISTS.flatMap((list) =>
    list === 'beforeOven'
      ? (['pot', 'stone', 'tin'] as const).map((vessel) => beforeOvenItems(vessel).length)
      : LISTS[list].length,
  );
  expect(counts).toHaveLength(7);
  for (const count of counts) {
    expect(count).toBeGreaterThanOrEqual(ITEMS.least);
    expect(count).toBeLessThanOrEqual(ITEMS.most);
  }
  // What is shorter is not called one.
  const ticked = ['feed', 'first', 'second', 'filling', 'worked'] as const;
  for (const list of [...ticked, 'pokeSigns', 'warmSigns', 'crustSigns'] as const)
    expect(isChecklist(list), list).toBe(false);
});

it('takes a state for every item, never assent', () => {
  const assent = /^(ok|okay|yes|no|done|sure|fine|all right|good|check|checked|confirm|got it)$/i;
  for (const list of CHECKLISTS)
    for (const { item, ask, slab, tiles } of questions[list]) {
      const options = [slab, ...tiles];
      expect(ask, item).toMatch(/\?$/);
      expect(new Set(options.map(({ value }) => value)).size, item).toBeGreaterThanOrEqual(2);
      for (const { label } of options) expect(label, `${list} ${item}`).not.toMatch(assent);
    }
});

describe.each(WHERE)('the checklist %s', (_, stage, recipe) => {
  it('counts its items, and after a reload asks the first that is not answered', () => {
    const hand = standing(stage, recipe);
    const of = see(hand).progress!.of;
    expect([of >= ITEMS.least, of <= ITEMS.most]).toEqual([true, true]);
    const asked: string[] = [];
    for (let done = 0; done < of; done += 1) {
      const view = see(hand);
      expect(see(hand, reopened(hand))).toEqual(view);
      expect(view.progress).toEqual({ done, of });
      expect(asked).not.toContain(view.headline);
      asked.push(view.headline);
      hand.do(view.slab.deed!);
    }
    expect(see(hand).progress === null || see(hand).stage !== stage).toBe(true);
  });

  it('asks an item anew that an answer left open, before all that follow', () => {
    const hand = standing(stage, recipe);
    const first = see(hand);
    const list = CHECKLISTS.find((one) =>
      questions[one].some(({ ask }) => ask === first.headline),
    )!;
    let left = 0;
    while (see(hand).progress !== null && see(hand).stage === stage) {
      const view = see(hand);
      const open = view.tiles.find(
        ({ deed }) => deed.kind === 'press' && !closes(list, deed.item!, deed.value),
      );
      if (open) {
        left += 1;
        hand.do(open.deed);
        expect(see(hand, reopened(hand)).headline).toBe(view.headline);
        expect(see(hand).progress).toEqual(view.progress);
        expect(see(hand).detail).not.toBe(view.detail);
      }
      hand.do(view.slab.deed!);
    }
    expect(left > 0).toBe(list === 'beforeStart' || list === 'beforeOven');
  });
});
