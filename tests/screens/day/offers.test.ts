import { expect, it } from 'vitest';
import type { DayAsk } from '../../../src/core/day/laid/day-plan.ts';
import type { Change } from '../../../src/core/day/plan/types.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import type { DayDraft } from '../../../src/screens/day-draft.ts';
import { EMPTY_BAKE, EMPTY_DAY } from '../../../src/screens/day/draft.ts';
import { nothingFits, troublesFit } from '../../../src/screens/day/offers.ts';
import { bread } from './breads.ts';
import { READ, SATURDAY_NOON } from './saturday.ts';

const formula = bread('lane-wheat');
const { name } = formula;
const ask: DayAsk = {
  bakes: [
    {
      name,
      recipe: makeRecipe(formula, { loaves: 9, piece: formula.piece }).recipe!,
      due: SATURDAY_NOON,
      startAt: null,
      bake: null,
      pins: {},
    },
  ],
  kitchen: 22,
  belief: { mean: 0, sd: 0.3 },
  away: [],
};
const draft: DayDraft = {
  ...EMPTY_DAY,
  kitchen: 22,
  bakes: [{ ...EMPTY_BAKE, loaves: 9, due: SATURDAY_NOON, pins: { mix: 1 } }],
};
const world = { ask, asked: ask.bakes, time: READ.hour, places: () => 2 };
const offer = (changes: Change[], together?: Change[]) =>
  nothingFits({ fits: false, changes, because: [], ...(together ? { together } : {}) }, world);
const sleep: Change = {
  change: 'blocked',
  name: 'asleep',
  from: SATURDAY_NOON - 13.5 * 3_600_000,
  to: SATURDAY_NOON - 5.5 * 3_600_000,
  endEarlierBy: 20,
  startLaterBy: 45,
};

it('has each end of a window as a press of its own', () => {
  const { offers } = offer([sleep]);
  expect(offers.map(({ words }) => words).slice(0, 2)).toEqual([
    'Asleep only until 06:10, 20\u00a0min less.',
    'Asleep only from 23:15, 45\u00a0min later.',
  ]);
  expect(offers[0]!.take(draft).taken).toEqual([{ ...sleep, startLaterBy: null }]);
  expect(offers[1]!.take(draft).taken).toEqual([{ ...sleep, endEarlierBy: null }]);
});

it('lets a pin go by one press', () => {
  const { offers } = offer([{ change: 'unpin', batch: name, touch: 'mix', at: SATURDAY_NOON }]);
  expect(offers.map(({ words }) => words)).toEqual([
    `${name}: let “Mix flour and water” move from 12:00.`,
  ]);
  expect(offers[0]!.take(draft)).toMatchObject({ bakes: [{ pins: {} }], taken: [] });
});

it('asks for the later hour, or for as few loaves as the loads hold', () => {
  const { offers } = offer([
    { change: 'due', batch: name, laterBy: 40 },
    { change: 'fewerLoads', batch: name, loads: 3 },
  ]);
  expect(offers[0]!.take(draft).bakes[0]!.due).toBe(SATURDAY_NOON + 40 * 60_000);
  expect(offers[1]!.words).toBe(`${name}: 6 loaves only.`);
  // Another bread is another plan: what was put to an hour is free again.
  expect(offers[1]!.take(draft).bakes[0]).toMatchObject({ loaves: 6, pins: {} });
});

it('may begin now only where nothing else would do, and takes what only does together at once', () => {
  const nothing = offer([]);
  expect(nothing.offers.map(({ words }) => words)).toEqual([
    `${name}: start now, with no set time.`,
  ]);
  expect(nothing.offers[0]!.take(draft).bakes[0]!.due).toBe('now');
  const both = offer([], [{ ...sleep, startLaterBy: null }]);
  expect(both.lines.slice(-2)).toEqual([
    'Only these together would do:',
    'Asleep only until 06:10, 20\u00a0min less.',
  ]);
  expect(both.offers.map(({ take }) => take(draft).taken.length)).toEqual([1]);
  // Whoever asked for an hour is offered no other way of baking while a change of it would do.
  expect(offer([sleep]).offers).toHaveLength(2);
});

it('tells what no hour would mend with what would do', () => {
  const { lines, offers } = troublesFit(
    [{ key: 'fridgeShort', bake: name, needs: 9, has: 6 }],
    ask,
  );
  expect(lines).toEqual([`${name}: 9 loaves in a fridge for 6.`]);
  expect(offers.map(({ words }) => words)).toEqual([`${name}: 6 loaves only.`]);
});
