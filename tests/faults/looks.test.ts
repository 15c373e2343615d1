import { describe, it } from 'vitest';
import { WAYS } from '../browser/harness/look-at.ts';
import { lookPages } from '../browser/harness/look-pages.ts';
import { lookWalk } from '../browser/harness/look-walk.ts';
import { PAGE_LISTS } from '../browser/harness/page-lists.ts';
import { everyWay } from '../browser/harness/ways.ts';
import { SLICES, type Slice } from './support/slices.ts';

const waysOf = ({ view, theme }: Slice) =>
  everyWay(WAYS).filter((way) => way.view === view && way.theme === theme);

it.each(SLICES)('holds the look of a bake in every way there is: %s', async (_, slice) => {
  await lookWalk(() => waysOf(slice));
});

describe.each(PAGE_LISTS.map((list) => [list.name, list] as const))(
  'holds the look of every page of the list %s',
  (_, { pages, clock }) => {
    it.each(SLICES)('in every way there is: %s', async (__, slice) => {
      await lookPages(pages, () => waysOf(slice), { clock });
    });
  },
);
