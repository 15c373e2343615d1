import { describe, it } from 'vitest';
import { BAKE_PAGES } from '../browser/harness/bake-pages.ts';
import { WAYS } from '../browser/harness/look-at.ts';
import { lookPages } from '../browser/harness/look-pages.ts';
import { lookWalk } from '../browser/harness/look-walk.ts';
import { PAGES } from '../browser/harness/pages.ts';
import { STARTER_PAGES } from '../browser/harness/starter-pages.ts';
import { everyWay } from '../browser/harness/ways.ts';
import { SLICES, type Slice } from './support/slices.ts';

const waysOf = ({ view, theme }: Slice) =>
  everyWay(WAYS).filter((way) => way.view === view && way.theme === theme);

it.each(SLICES)('holds the look of a bake in every way there is: %s', async (_, slice) => {
  await lookWalk(() => waysOf(slice));
});

describe.each([
  ['every page', PAGES],
  ['every page of the starter', STARTER_PAGES],
  ['every page of a bake', BAKE_PAGES],
])('holds the look of %s', (_, pages) => {
  it.each(SLICES)('in every way there is: %s', async (_, slice) => {
    await lookPages(pages, () => waysOf(slice));
  });
});
