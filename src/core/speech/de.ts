import type { Catalogues } from './tongue.ts';
import * as before from './de/before.ts';
import * as bench from './de/bench.ts';
import * as bowls from './de/bowls.ts';
import * as bulk from './de/bulk.ts';
import * as care from './de/care.ts';
import * as controls from './de/controls.ts';
import * as feed from './de/feed.ts';
import * as levain from './de/levain.ts';
import * as mix from './de/mix.ts';
import * as read from './de/read.ts';
import * as water from './de/water.ts';
import * as weigh from './de/weigh.ts';

/** The German catalogues, each as its English file of `words/` has it. */
export const de: Catalogues = {
  before,
  bench,
  bowls,
  bulk,
  care,
  controls,
  feed,
  levain,
  mix,
  read,
  water,
  weigh,
};
