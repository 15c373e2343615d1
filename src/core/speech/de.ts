import type { Catalogues } from './tongue.ts';
import * as allergens from './de/allergens.ts';
import * as before from './de/before.ts';
import * as bench from './de/bench.ts';
import * as book from './de/book.ts';
import * as bookParts from './de/book-parts.ts';
import * as bowls from './de/bowls.ts';
import * as breads from './de/breads.ts';
import * as bulk from './de/bulk.ts';
import * as calls from './de/calls.ts';
import * as care from './de/care.ts';
import * as carePage from './de/care-page.ts';
import * as causes from './de/causes.ts';
import * as circle from './de/circle.ts';
import * as circleDough from './de/circle-dough.ts';
import * as circleOven from './de/circle-oven.ts';
import * as controls from './de/controls.ts';
import * as cool from './de/cool.ts';
import * as crust from './de/crust.ts';
import * as cupboard from './de/cupboard.ts';
import * as cutLoaf from './de/cut-loaf.ts';
import * as day from './de/day.ts';
import * as door from './de/door.ts';
import * as doubts from './de/doubts.ts';
import * as earKitchen from './de/ear-kitchen.ts';
import * as earBench from './de/ear-bench.ts';
import * as feed from './de/feed.ts';
import * as fillingKinds from './de/filling-kinds.ts';
import * as gate from './de/gate.ts';
import * as handOver from './de/hand-over.ts';
import * as headsUp from './de/heads-up.ts';
import * as heed from './de/heed.ts';
import * as keepsakes from './de/keepsakes.ts';
import * as kitchen from './de/kitchen.ts';
import * as kitchenFields from './de/kitchen-fields.ts';
import * as kitchenPage from './de/kitchen-page.ts';
import * as kitchenWarnings from './de/kitchen-warnings.ts';
import * as label from './de/label.ts';
import * as lastTime from './de/last-time.ts';
import * as leapt from './de/leapt.ts';
import * as left from './de/left.ts';
import * as lessonPage from './de/lesson-page.ts';
import * as lessons from './de/lessons.ts';
import * as letterPad from './de/letter-pad.ts';
import * as levain from './de/levain.ts';
import * as live from './de/live.ts';
import * as log from './de/log.ts';
import * as logBake from './de/log-bake.ts';
import * as logChart from './de/log-chart.ts';
import * as logList from './de/log-list.ts';
import * as logPlots from './de/log-plots.ts';
import * as logShare from './de/log-share.ts';
import * as logSheet from './de/log-sheet.ts';
import * as measures from './de/measures.ts';
import * as mix from './de/mix.ts';
import * as moved from './de/moved.ts';
import * as names from './de/names.ts';
import * as note from './de/note.ts';
import * as notices from './de/notices.ts';
import * as orders from './de/orders.ts';
import * as oven from './de/oven.ts';
import * as ovenMany from './de/oven-many.ts';
import * as ovenRack from './de/oven-rack.ts';
import * as ovenStone from './de/oven-stone.ts';
import * as ovenTin from './de/oven-tin.ts';
import * as ovenTray from './de/oven-tray.ts';
import * as parts from './de/parts.ts';
import * as pedal from './de/pedal.ts';
import * as picture from './de/picture.ts';
import * as plan from './de/plan.ts';
import * as potsPage from './de/pots-page.ts';
import * as proof from './de/proof.ts';
import * as read from './de/read.ts';
import * as readAFile from './de/read-a-file.ts';
import * as readings from './de/readings.ts';
import * as record from './de/record.ts';
import * as remedies from './de/remedies.ts';
import * as remedyPage from './de/remedy-page.ts';
import * as rise from './de/rise.ts';
import * as running from './de/running.ts';
import * as saveAFile from './de/save-a-file.ts';
import * as saving from './de/saving.ts';
import * as several from './de/several.ts';
import * as shape from './de/shape.ts';
import * as share from './de/share.ts';
import * as sheet from './de/sheet.ts';
import * as sheets from './de/sheets.ts';
import * as signs from './de/signs.ts';
import * as sketches from './de/sketches.ts';
import * as small from './de/small.ts';
import * as small1012 from './de/small-10-12.ts';
import * as small1012Dough from './de/small-10-12-dough.ts';
import * as small1012Oven from './de/small-10-12-oven.ts';
import * as small1012Tasks from './de/small-10-12-tasks.ts';
import * as small46 from './de/small-4-6.ts';
import * as small46Dough from './de/small-4-6-dough.ts';
import * as small46Oven from './de/small-4-6-oven.ts';
import * as small46Tasks from './de/small-4-6-tasks.ts';
import * as small79 from './de/small-7-9.ts';
import * as small79Dough from './de/small-7-9-dough.ts';
import * as small79Oven from './de/small-7-9-oven.ts';
import * as small79Tasks from './de/small-7-9-tasks.ts';
import * as soft from './de/soft.ts';
import * as soundCheck from './de/sound-check.ts';
import * as start from './de/start.ts';
import * as starter from './de/starter.ts';
import * as steps from './de/steps.ts';
import * as swaps from './de/swaps.ts';
import * as tags from './de/tags.ts';
import * as tasks from './de/tasks.ts';
import * as timers from './de/timers.ts';
import * as trouble from './de/trouble.ts';
import * as verdicts from './de/verdicts.ts';
import * as voice from './de/voice.ts';
import * as water from './de/water.ts';
import * as ways from './de/ways.ts';
import * as weigh from './de/weigh.ts';

/** The German catalogues, each as its English file of `words/` has it. */
export const de: Catalogues = {
  allergens,
  before,
  bench,
  book,
  'book-parts': bookParts,
  bowls,
  breads,
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
  'cut-loaf': cutLoaf,
  day,
  door,
  doubts,
  'ear-kitchen': earKitchen,
  'ear-bench': earBench,
  feed,
  'filling-kinds': fillingKinds,
  gate,
  'hand-over': handOver,
  'heads-up': headsUp,
  heed,
  keepsakes,
  kitchen,
  'kitchen-fields': kitchenFields,
  'kitchen-page': kitchenPage,
  'kitchen-warnings': kitchenWarnings,
  label,
  'last-time': lastTime,
  leapt,
  left,
  'lesson-page': lessonPage,
  lessons,
  'letter-pad': letterPad,
  levain,
  live,
  log,
  'log-bake': logBake,
  'log-chart': logChart,
  'log-list': logList,
  'log-plots': logPlots,
  'log-share': logShare,
  'log-sheet': logSheet,
  measures,
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
  parts,
  pedal,
  picture,
  plan,
  'pots-page': potsPage,
  proof,
  read,
  'read-a-file': readAFile,
  readings,
  record,
  remedies,
  'remedy-page': remedyPage,
  rise,
  running,
  'save-a-file': saveAFile,
  saving,
  several,
  shape,
  share,
  sheet,
  sheets,
  signs,
  sketches,
  small,
  'small-10-12': small1012,
  'small-10-12-dough': small1012Dough,
  'small-10-12-oven': small1012Oven,
  'small-10-12-tasks': small1012Tasks,
  'small-4-6': small46,
  'small-4-6-dough': small46Dough,
  'small-4-6-oven': small46Oven,
  'small-4-6-tasks': small46Tasks,
  'small-7-9': small79,
  'small-7-9-dough': small79Dough,
  'small-7-9-oven': small79Oven,
  'small-7-9-tasks': small79Tasks,
  soft,
  'sound-check': soundCheck,
  start,
  starter,
  steps,
  swaps,
  tags,
  tasks,
  timers,
  trouble,
  verdicts,
  voice,
  water,
  ways,
  weigh,
};
