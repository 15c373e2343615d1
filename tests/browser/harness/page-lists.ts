import { BAKE_PAGES } from './bake-pages.ts';
import { BOOK_PAGES } from './book-pages.ts';
import { BOWL_PAGES } from './bowl-pages.ts';
import { DAY_PAGES } from './day-pages.ts';
import { CAME_UP_PAGES, LATE_LEVAIN, LIVE_PAGES, MISSED_FOLD } from './live-pages.ts';
import type { PageStep } from './page-step.ts';
import { PAGES } from './pages.ts';
import { SHARE_PAGES } from './share-pages.ts';
import { STARTER_PAGES } from './starter-pages.ts';

/** Pages that are come to one after the other in one sitting. */
export interface PageList {
  /** What its contact sheets are named by. */
  readonly name: string;
  readonly pages: readonly PageStep[];
  /** When it begins, where that matters: epoch ms. */
  readonly clock?: number;
}

/** Every list of pages beside the act: a page that stands in one is measured, and photographed, with the others. */
export const PAGE_LISTS: readonly PageList[] = [
  { name: 'pages', pages: PAGES },
  { name: 'starter', pages: STARTER_PAGES },
  { name: 'bake-pages', pages: BAKE_PAGES },
  { name: 'bowls', pages: BOWL_PAGES },
  { name: 'day', pages: DAY_PAGES },
  { name: 'book', pages: BOOK_PAGES },
  { name: 'share', pages: SHARE_PAGES },
  { name: 'live', pages: LIVE_PAGES, clock: LATE_LEVAIN },
  { name: 'came-up', pages: CAME_UP_PAGES, clock: MISSED_FOLD },
];
