import type { Catalogues } from './tongue.ts';
import * as allergens from './fr/allergens.ts';
import * as bakeWords from './fr/bake-words.ts';
import * as before from './fr/before.ts';
import * as bench from './fr/bench.ts';
import * as book from './fr/book.ts';
import * as bookParts from './fr/book-parts.ts';
import * as bowls from './fr/bowls.ts';
import * as bulk from './fr/bulk.ts';
import * as calls from './fr/calls.ts';
import * as care from './fr/care.ts';
import * as carePage from './fr/care-page.ts';
import * as causes from './fr/causes.ts';
import * as circle from './fr/circle.ts';
import * as circleDough from './fr/circle-dough.ts';
import * as circleOven from './fr/circle-oven.ts';
import * as controls from './fr/controls.ts';
import * as cool from './fr/cool.ts';
import * as crust from './fr/crust.ts';
import * as cupboard from './fr/cupboard.ts';
import * as day from './fr/day.ts';
import * as door from './fr/door.ts';
import * as doubts from './fr/doubts.ts';
import * as feed from './fr/feed.ts';
import * as fillingKinds from './fr/filling-kinds.ts';
import * as gate from './fr/gate.ts';
import * as handOver from './fr/hand-over.ts';
import * as headsUp from './fr/heads-up.ts';
import * as heed from './fr/heed.ts';
import * as kitchen from './fr/kitchen.ts';
import * as kitchenFields from './fr/kitchen-fields.ts';
import * as kitchenPage from './fr/kitchen-page.ts';
import * as kitchenWarnings from './fr/kitchen-warnings.ts';
import * as lastTime from './fr/last-time.ts';
import * as leapt from './fr/leapt.ts';
import * as left from './fr/left.ts';
import * as levain from './fr/levain.ts';
import * as live from './fr/live.ts';
import * as mix from './fr/mix.ts';
import * as moved from './fr/moved.ts';
import * as names from './fr/names.ts';
import * as note from './fr/note.ts';
import * as notices from './fr/notices.ts';
import * as orders from './fr/orders.ts';
import * as oven from './fr/oven.ts';
import * as ovenMany from './fr/oven-many.ts';
import * as ovenRack from './fr/oven-rack.ts';
import * as ovenStone from './fr/oven-stone.ts';
import * as ovenTin from './fr/oven-tin.ts';
import * as ovenTray from './fr/oven-tray.ts';
import * as plan from './fr/plan.ts';
import * as proof from './fr/proof.ts';
import * as questions from './fr/questions.ts';
import * as read from './fr/read.ts';
import * as readings from './fr/readings.ts';
import * as rise from './fr/rise.ts';
import * as running from './fr/running.ts';
import * as several from './fr/several.ts';
import * as shape from './fr/shape.ts';
import * as signs from './fr/signs.ts';
import * as sketches from './fr/sketches.ts';
import * as start from './fr/start.ts';
import * as starter from './fr/starter.ts';
import * as steps from './fr/steps.ts';
import * as tasks from './fr/tasks.ts';
import * as timers from './fr/timers.ts';
import * as trouble from './fr/trouble.ts';
import * as verdicts from './fr/verdicts.ts';
import * as water from './fr/water.ts';
import * as ways from './fr/ways.ts';
import * as weigh from './fr/weigh.ts';

/** The French catalogues, by the name of their file. */
export const fr: Catalogues = {
  allergens,
  'bake-words': bakeWords,
  before,
  bench,
  book,
  'book-parts': bookParts,
  bowls,
  bulk,
  calls,
  care,
  'care-page': carePage,
  causes,
  circle,
  'circle-dough': circleDough,
  'circle-oven': circleOven,
  controls,
  cool,
  crust,
  cupboard,
  day,
  door,
  doubts,
  feed,
  'filling-kinds': fillingKinds,
  gate,
  'hand-over': handOver,
  'heads-up': headsUp,
  heed,
  kitchen,
  'kitchen-fields': kitchenFields,
  'kitchen-page': kitchenPage,
  'kitchen-warnings': kitchenWarnings,
  'last-time': lastTime,
  leapt,
  left,
  levain,
  live,
  mix,
  moved,
  names,
  note,
  notices,
  orders,
  oven,
  'oven-many': ovenMany,
  'oven-rack': ovenRack,
  'oven-stone': ovenStone,
  'oven-tin': ovenTin,
  'oven-tray': ovenTray,
  plan,
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
