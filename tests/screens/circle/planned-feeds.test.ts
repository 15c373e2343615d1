import { expect, it } from 'vitest';
import { baseDoughs } from '../../../src/core/circle/base-dough.ts';
import { batchesOf } from '../../../src/core/circle/batches.ts';
import type { DayPlan } from '../../../src/core/day/laid/day-plan.ts';
import { EQUIPMENT } from '../../../src/core/kitchen/equipment.ts';
import { feedLines, plannedFeeds } from '../../../src/screens/circle/dough/planned-feeds.ts';
import { figBread, plainBread } from '../../core/circle/support/same-dough-breads.ts';

const { batches } = batchesOf(
  [
    {
      at: null,
      lines: [
        { bread: 'plain', count: 8, grams: 700, cut: false },
        { bread: 'fig', count: 4, grams: 800, cut: false },
      ],
    },
  ],
  { formulas: [plainBread, figBread], weighIns: [], scale: null },
);
const base = baseDoughs(batches, EQUIPMENT)[0]!;
const [plain, fig] = batches;
const touch = (batch: string, at: number, choice: string) => {
  const rest = { hands: 10, earliest: at, latest: at, fineUntil: at, lastPossible: at };
  return { batch, name: 'feed levain', at, ...rest, choice, frozen: false };
};
const planOf = (ratios: [string, string]): DayPlan => ({
  id: 'day-1',
  sequence: 1,
  ask: {
    bakes: batches.map(({ recipe }, i) => {
      return { name: `bread ${i}`, recipe, due: null, startAt: 0, bake: null, pins: {} };
    }),
    kitchen: 22,
    belief: { mean: 0, sd: 0.3 },
    away: [],
  },
  touches: [touch('bread 0', 100, ratios[0]), touch('bread 1', 200, ratios[1])],
  ready: batches.map((_, i) => ({ batch: `bread ${i}`, at: 9000 })),
});
const onDay = (ready: number) => ready === 9000;
const seed = (lines: readonly { item: string; grams: number }[]) =>
  lines.find(({ item }) => item === 'seed')!.grams;
const sum = (lines: readonly { grams: number }[]) => lines.reduce((all, one) => all + one.grams, 0);

it('are those of the plan’s bakes that are ready that day and are the same loaves', () => {
  const feeds = plannedFeeds(base, planOf(['1:5:5', '1:5:5']), onDay);
  expect(feeds).toEqual([
    { batch: plain, at: 100, ratio: '1:5:5' },
    { batch: fig, at: 200, ratio: '1:5:5' },
  ]);
  expect(plannedFeeds(base, planOf(['1:5:5', '1:5:5']), () => false)).toEqual([]);
  expect(plannedFeeds(base, null, onDay)).toEqual([]);
  const others = { batches: [{ ...plain!, loaves: 9 }] };
  expect(plannedFeeds(others, planOf(['1:5:5', '1:5:5']), onDay)).toEqual([]);
});

it('weigh into the jar what the plan chose, as much levain as before', () => {
  const fed = (ratios: [string, string]) =>
    feedLines(base, plannedFeeds(base, planOf(ratios), onDay));
  expect(fed(['1:5:5', '1:5:5'])).toEqual(base.feed);
  expect(Math.abs(sum(fed(['1:2:2', '1:2:2'])) - sum(base.feed))).toBeLessThanOrEqual(0.5);
  expect(seed(fed(['1:2:2', '1:2:2']))).toBeCloseTo((seed(base.feed) * 11) / 5, 0);
  // Chosen apart, one jar cannot be both: the formula's own stays.
  expect(fed(['1:2:2', '1:5:5'])).toEqual(base.feed);
  expect(feedLines(base, [])).toEqual(base.feed);
});
