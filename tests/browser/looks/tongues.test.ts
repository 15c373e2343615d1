import { it } from 'vitest';
import type { OtherTongue } from '../harness/in-tongue.ts';
import { lookPages } from '../harness/look-pages.ts';
import type { ViewportName } from '../harness/open-app.ts';
import { PAGE_LISTS } from '../harness/page-lists.ts';

/** Where longer words once ran out: each list once, in one tongue on one tablet; all by hand (tests/faults). */
const ONCE: readonly (readonly [string, OtherTongue, ViewportName])[] = [
  // Names of one long word, a gate's label, a notice beside the start page.
  ['starter', 'de', 'small'],
  // Presses of the bench, and a call that is put off.
  ['bowls', 'fr', 'small'],
];

it.each(ONCE)(
  'holds bigger words on every page of the list %s, in %s',
  async (list, tongue, view) => {
    const { pages, clock } = PAGE_LISTS.find(({ name }) => name === list)!;
    const bigger = { view, theme: 'light', hands: 'right', text: 'bigger' } as const;
    await lookPages(pages, () => [bigger], { clock, tongue, zoomed: 3 });
  },
);
