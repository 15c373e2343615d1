import { describe, it } from 'vitest';
import type { LookedWay } from '../browser/harness/look-at.ts';
import { LOCALES, type OtherTongue } from '../browser/harness/in-tongue.ts';
import { lookPages } from '../browser/harness/look-pages.ts';
import { lookWalk } from '../browser/harness/look-walk.ts';
import { PAGE_LISTS } from '../browser/harness/page-lists.ts';

/** Every tablet in bigger words: what is whole there is whole in plain ones. */
const BIGGER: readonly LookedWay[] = (['wide', 'small', 'tall'] as const).map((view) => ({
  view,
  theme: 'light',
  hands: 'right',
  text: 'bigger',
}));

describe.each(Object.keys(LOCALES) as OtherTongue[])('in bigger words, in %s', (tongue) => {
  it.each(PAGE_LISTS.map((list) => [list.name, list] as const))(
    'nothing clips or runs out on any page of the list %s',
    async (_, { pages, clock }) => {
      await lookPages(pages, () => BIGGER, { clock, tongue });
    },
  );

  it('nothing clips or runs out in any kind of state of a bake', async () => {
    await lookWalk(() => BIGGER, tongue);
  });
});
