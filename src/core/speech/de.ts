import type { Catalogues } from './tongue.ts';
import * as before from './de/before.ts';
import * as bench from './de/bench.ts';
import * as bowls from './de/bowls.ts';
import * as bulk from './de/bulk.ts';
import * as calls from './de/calls.ts';
import * as care from './de/care.ts';
import * as carePage from './de/care-page.ts';
import * as controls from './de/controls.ts';
import * as cool from './de/cool.ts';
import * as crust from './de/crust.ts';
import * as door from './de/door.ts';
import * as doubts from './de/doubts.ts';
import * as feed from './de/feed.ts';
import * as gate from './de/gate.ts';
import * as handOver from './de/hand-over.ts';
import * as headsUp from './de/heads-up.ts';
import * as heed from './de/heed.ts';
import * as kitchen from './de/kitchen.ts';
import * as kitchenFields from './de/kitchen-fields.ts';
import * as kitchenPage from './de/kitchen-page.ts';
import * as kitchenWarnings from './de/kitchen-warnings.ts';
import * as left from './de/left.ts';
import * as levain from './de/levain.ts';
import * as mix from './de/mix.ts';
import * as moved from './de/moved.ts';
import * as names from './de/names.ts';
import * as note from './de/note.ts';
import * as notices from './de/notices.ts';
import * as oven from './de/oven.ts';
import * as ovenMany from './de/oven-many.ts';
import * as ovenRack from './de/oven-rack.ts';
import * as ovenStone from './de/oven-stone.ts';
import * as ovenTin from './de/oven-tin.ts';
import * as ovenTray from './de/oven-tray.ts';
import * as proof from './de/proof.ts';
import * as questions from './de/questions.ts';
import * as read from './de/read.ts';
import * as readings from './de/readings.ts';
import * as rise from './de/rise.ts';
import * as running from './de/running.ts';
import * as several from './de/several.ts';
import * as shape from './de/shape.ts';
import * as signs from './de/signs.ts';
import * as sketches from './de/sketches.ts';
import * as start from './de/start.ts';
import * as starter from './de/starter.ts';
import * as steps from './de/steps.ts';
import * as tasks from './de/tasks.ts';
import * as timers from './de/timers.ts';
import * as trouble from './de/trouble.ts';
import * as verdicts from './de/verdicts.ts';
import * as water from './de/water.ts';
import * as ways from './de/ways.ts';
import * as weigh from './de/weigh.ts';

/** The German catalogues, each as its English file of `words/` has it. */
export const de: Catalogues = {
  before,
  bench,
  bowls,
  bulk,
  calls,
  care,
  'care-page': carePage,
  controls,
  cool,
  crust,
  door,
  doubts,
  feed,
  gate,
  'hand-over': handOver,
  'heads-up': headsUp,
  heed,
  kitchen,
  'kitchen-fields': kitchenFields,
  'kitchen-page': kitchenPage,
  'kitchen-warnings': kitchenWarnings,
  left,
  levain,
  mix,
  moved,
  names,
  note,
  notices,
  oven,
  'oven-many': ovenMany,
  'oven-rack': ovenRack,
  'oven-stone': ovenStone,
  'oven-tin': ovenTin,
  'oven-tray': ovenTray,
  proof,
  questions,
  read,
  readings,
  rise,
  running,
  several,
  shape,
  signs,
  sketches,
  start,
  starter,
  steps,
  tasks,
  timers,
  trouble,
  verdicts,
  water,
  ways,
  weigh,
};
