import { expect, it } from 'vitest';
import { WAYS, type LookedWay } from './harness/look-at.ts';
import { lookPages } from './harness/look-pages.ts';
import { lookWalk } from './harness/look-walk.ts';
import { PAGE_LISTS } from './harness/page-lists.ts';
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

const plainly = { theme: 'light', hands: 'right', text: 'bigger' } as const;
/** Ways in which something once did not fit, besides the one that falls to the page. */
const ONCE: Readonly<Record<string, LookedWay>> = {
  // Tiles that are read on from a left hand's side.
  'where is the dough': { ...plainly, view: 'wide', hands: 'left' },
  // Words wider than their presses.
  'starter, fed': { ...plainly, view: 'small' },
  // Five lines of caption.
  'told over the bench': { ...plainly, view: 'tall' },
  // A caption over the headline.
  'beside another bake, what may be done ahead': { ...plainly, view: 'tall' },
  // Rows of hours beside narrow names.
  'the day so far, taken': { ...plainly, view: 'tall' },
  'day, said': { ...plainly, view: 'tall' },
  // Words wider than their presses, and the tape between presses in three rows.
  'day, the plan': { ...plainly, view: 'small' },
};

/** Each page in one of the few ways, its neighbours in others, one of three zoomed: all by hand (tests/faults). */
it.each(PAGE_LISTS.map((list) => [list.name, list] as const))(
  'holds the same on every page of the list %s',
  async (_, { pages, clock }) => {
    const ways = pairwise(WAYS);
    await lookPages(
      pages,
      (n, name) => [ways[n % ways.length]!, ...(ONCE[name] ? [ONCE[name]] : [])],
      { clock, zoomed: 3 },
    );
  },
  240_000,
);
