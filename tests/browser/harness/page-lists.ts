import { BACKUP_PAGES } from './backup-pages.ts';
import { BAKE_PAGES } from './bake-pages.ts';
import { BOOK_PAGES } from './book-pages.ts';
import { BOWL_PAGES } from './bowl-pages.ts';
import { CHILD_PAGES, LEARNER_PAGES } from './child-pages.ts';
import { CIRCLE_PAGES } from './circle-pages.ts';
import { CUPBOARD_PAGES } from './cupboard-pages.ts';
import { CUT_PAGES } from './cut-pages.ts';
import { DAY_PAGES } from './day-pages.ts';
import { KEEPSAKE_PAGES } from './keepsake-pages.ts';
import { LABEL_PAGES } from './label-pages.ts';
import { CAME_UP_PAGES, LATE_LEVAIN, LIVE_PAGES, MISSED_FOLD } from './live-pages.ts';
import { AFTER_YEAR, LOG_BAKE_PAGES } from './log-bake-pages.ts';
import { LOG_PAGES } from './log-pages.ts';
import { NEXT_PAGES } from './next-pages.ts';
import { LOG_PLOT_PAGES } from './log-plot-pages.ts';
import { EAR_PAGES } from './ear-pages.ts';
import { HAND_PAGES } from './hand-pages.ts';
import { OVEN_PAGES } from './oven-pages.ts';
import { DOUGH_PAGES } from './dough-pages.ts';
import { ORDER_PAGES } from './order-pages.ts';
import type { PageStep } from './page-step.ts';
import { PAGES } from './pages.ts';
import { SHARE_PAGES } from './share-pages.ts';
import { STARTER_PAGES } from './starter-pages.ts';

/** The files of tests/browser/looks that look at lists, each short enough to share its time with another. */
export const LOOK_FILES = ['first', 'bake', 'day', 'book', 'circle', 'log', 'small'] as const;
export type LookFile = (typeof LOOK_FILES)[number];

/** Pages that are come to one after the other in one sitting. */
export interface PageList {
  /** What its contact sheets are named by. */
  readonly name: string;
  readonly file: LookFile;
  readonly pages: readonly PageStep[];
  /** When it begins, where that matters: epoch ms. */
  readonly clock?: number;
}

/** Every list of pages beside the act: a page that stands in one is measured, and photographed, with the others. */
export const PAGE_LISTS: readonly PageList[] = [
  { name: 'pages', file: 'first', pages: PAGES },
  { name: 'starter', file: 'first', pages: STARTER_PAGES },
  { name: 'ear', file: 'first', pages: EAR_PAGES },
  { name: 'bake-pages', file: 'bake', pages: BAKE_PAGES },
  { name: 'bowls', file: 'bake', pages: BOWL_PAGES },
  { name: 'day', file: 'day', pages: DAY_PAGES },
  { name: 'book', file: 'book', pages: BOOK_PAGES },
  { name: 'circle', file: 'circle', pages: CIRCLE_PAGES },
  { name: 'oven', file: 'circle', pages: OVEN_PAGES },
  { name: 'dough', file: 'circle', pages: DOUGH_PAGES },
  { name: 'orders', file: 'circle', pages: ORDER_PAGES },
  { name: 'labels', file: 'circle', pages: LABEL_PAGES },
  { name: 'cupboard', file: 'circle', pages: CUPBOARD_PAGES },
  { name: 'hand', file: 'circle', pages: HAND_PAGES },
  { name: 'log', file: 'log', pages: LOG_PAGES },
  { name: 'log-bake', file: 'log', pages: LOG_BAKE_PAGES, clock: AFTER_YEAR },
  { name: 'log-plots', file: 'log', pages: LOG_PLOT_PAGES },
  { name: 'cut', file: 'log', pages: CUT_PAGES },
  { name: 'backup', file: 'log', pages: BACKUP_PAGES },
  { name: 'next', file: 'log', pages: NEXT_PAGES },
  { name: 'keepsakes', file: 'log', pages: KEEPSAKE_PAGES },
  { name: 'share', file: 'book', pages: SHARE_PAGES },
  { name: 'live', file: 'day', pages: LIVE_PAGES, clock: LATE_LEVAIN },
  { name: 'came-up', file: 'day', pages: CAME_UP_PAGES, clock: MISSED_FOLD },
  { name: 'small', file: 'small', pages: CHILD_PAGES },
  { name: 'lesson', file: 'small', pages: LEARNER_PAGES },
];
