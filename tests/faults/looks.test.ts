import { describe, it } from 'vitest';
import { WAYS } from '../browser/harness/look-at.ts';
import { lookPages } from '../browser/harness/look-pages.ts';
import { lookWalk } from '../browser/harness/look-walk.ts';
import { PAGE_LISTS } from '../browser/harness/page-lists.ts';
import { everyWay } from '../browser/harness/ways.ts';

/** Each list is walked once, and every page looked at in all of them: one by itself with `-t "list oven"`. */
const ALL = everyWay(WAYS);

it('holds the look of a bake in every way there is', async () => {
  await lookWalk(() => ALL);
});

describe.each(PAGE_LISTS.map((list) => [list.name, list] as const))(
  'holds the look of every page of the list %s',
  (_, { pages, clock }) => {
    it('in every way there is', async () => {
      await lookPages(pages, () => ALL, { clock });
    });
  },
);
