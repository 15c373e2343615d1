import { expect, it } from 'vitest';
import { WAYS, type LookedWay } from './harness/look-at.ts';
import { lookPages } from './harness/look-pages.ts';
import { lookWalk } from './harness/look-walk.ts';
import { everyWay, pairwise } from './harness/ways.ts';

const pairs = (rows: readonly LookedWay[]): Set<string> =>
  new Set(
    rows.flatMap((row) => {
      const told = Object.values(row);
      return told.flatMap((a, i) => told.slice(i + 1).map((b, n) => `${i} ${a} ${i + n + 1} ${b}`));
    }),
  );

it('has each choice meet each other in few ways', () => {
  const few = pairwise(WAYS);
  expect(few.length).toBeLessThanOrEqual(8);
  expect(pairs(few)).toEqual(pairs(everyWay(WAYS)));
});

it('holds sizes, gaps, cap heights, contrast, digits and axe in every kind of state, and small windows', async () => {
  const ways = pairwise(WAYS);
  const looked = await lookWalk((n) => [ways[n % ways.length]!]);
  expect(looked).toBeGreaterThanOrEqual(ways.length);
}, 240_000);

/** Tiles that are read on from a left hand's side. */
const LONGEST: LookedWay = { view: 'wide', theme: 'light', hands: 'left', text: 'bigger' };

it('holds the same on every page of Start and Kitchen, and on all that lies over a bench', async () => {
  const ways = pairwise(WAYS);
  await lookPages((n, name) => [
    ...[0, 3].map((on) => ways[(n + on) % ways.length]!),
    ...(name === 'where is the dough' ? [LONGEST] : []),
  ]);
}, 240_000);
