import { it } from 'vitest';
import { WAYS, type LookedWay } from './look-at.ts';
import { lookPages } from './look-pages.ts';
import { PAGE_LISTS, type LookFile } from './page-lists.ts';
import { pairwise } from './ways.ts';

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
  // The longest of what a file is told to bring, and a word wider than its press.
  'read a saved file, with circle and notes': { ...plainly, view: 'small', hands: 'left' },
  'save as a file, the sheet saved': { ...plainly, view: 'tall' },
  // Words wider than their presses, and the tape between presses in three rows.
  'day, the plan': { ...plainly, view: 'small' },
};

/**
 * Each page of the lists that are looked at in this file in one of the few ways, its neighbours in others, one
 * of three zoomed: all by hand (tests/faults).
 */
export const looksOf = (file: LookFile): void =>
  it.each(
    PAGE_LISTS.filter((list) => list.file === file).map((list) => [list.name, list] as const),
  )('holds the same on every page of the list %s', async (_, { pages, clock }) => {
    const ways = pairwise(WAYS);
    await lookPages(
      pages,
      (n, name) => [ways[n % ways.length]!, ...(ONCE[name] ? [ONCE[name]] : [])],
      { clock, zoomed: 3 },
    );
  });
