import { expect, it } from 'vitest';
import { waitFor } from '../../src/core/day/waits.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import { focusOn } from '../../src/screens/focus.ts';
import { benchView } from '../../src/screens/bench/view.ts';
import { mayRecord } from '../../src/screens/may-record.ts';
import { Hand } from '../machines/support/hand.ts';
import { walkTo } from '../machines/support/onward.ts';
import { RECIPE } from '../machines/support/recipe.ts';

const [first] = RECIPE.formula.fillings;
const may = ({ kitchen }: Hand): boolean => mayRecord(kitchen, kitchen.now);

/** A dough before its first fold, with something to be done to its filling soon. */
const before = (task: 'toast' | 'drain'): Hand => {
  const filling = { ...first!, prepare: [task] };
  const recipe: Recipe = { ...RECIPE, formula: { ...RECIPE.formula, fillings: [filling] } };
  const hand = new Hand({ wait: waitFor });
  hand.start('a', 'mix.first', ['a1'], recipe);
  return walkTo(hand, 'a', 'bulk.between');
};

it.each([
  ['toast', false],
  ['drain', true],
] as const)('clips may be recorded while the filling waits to be worked on: %s, %s', (task, is) => {
  const hand = before(task);
  expect(may(hand)).toBe(true);
  for (let n = 0; n < 29 && hand.ringing === null; n += 1) hand.turn(1);
  expect(hand.ringing).toBe(`a:lead.${task}`);
  // Nobody records while it rings; it is hushed, and somebody may be at the tray.
  expect(may(hand)).toBe(false);
  hand.heard('a');
  expect(may(hand)).toBe(is);
  const hour = (): string => '12:00';
  const units = { heat: 'C', weight: 'g' } as const;
  hand.do(benchView(hand.kitchen, focusOn(hand.kitchen, 'a')!, hour, null, units).slab.deed!);
  expect(may(hand)).toBe(true);
});
