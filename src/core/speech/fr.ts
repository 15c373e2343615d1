import type { Catalogues } from './tongue.ts';
import * as allergens from './fr/allergens.ts';
import * as bakeWords from './fr/bake-words.ts';
import * as before from './fr/before.ts';
import * as bench from './fr/bench.ts';
import * as book from './fr/book.ts';
import * as bookParts from './fr/book-parts.ts';
import * as bowls from './fr/bowls.ts';
import * as breads from './fr/breads.ts';
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
import * as cutLoaf from './fr/cut-loaf.ts';
import * as day from './fr/day.ts';
import * as door from './fr/door.ts';
import * as doubts from './fr/doubts.ts';
import * as earKitchen from './fr/ear-kitchen.ts';
import * as earBench from './fr/ear-bench.ts';
import * as feed from './fr/feed.ts';
import * as fillingKinds from './fr/filling-kinds.ts';
import * as gate from './fr/gate.ts';
import * as handOver from './fr/hand-over.ts';
import * as headsUp from './fr/heads-up.ts';
import * as heed from './fr/heed.ts';
import * as keepsakes from './fr/keepsakes.ts';
import * as kitchen from './fr/kitchen.ts';
import * as kitchenFields from './fr/kitchen-fields.ts';
import * as kitchenPage from './fr/kitchen-page.ts';
import * as kitchenWarnings from './fr/kitchen-warnings.ts';
import * as label from './fr/label.ts';
import * as lastTime from './fr/last-time.ts';
import * as leapt from './fr/leapt.ts';
import * as left from './fr/left.ts';
import * as lessonPage from './fr/lesson-page.ts';
import * as lessons from './fr/lessons.ts';
import * as letterPad from './fr/letter-pad.ts';
import * as levain from './fr/levain.ts';
import * as live from './fr/live.ts';
import * as log from './fr/log.ts';
import * as logBake from './fr/log-bake.ts';
import * as logChart from './fr/log-chart.ts';
import * as logList from './fr/log-list.ts';
import * as logPlots from './fr/log-plots.ts';
import * as logShare from './fr/log-share.ts';
import * as logSheet from './fr/log-sheet.ts';
import * as measures from './fr/measures.ts';
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
import * as parts from './fr/parts.ts';
import * as pedal from './fr/pedal.ts';
import * as picture from './fr/picture.ts';
import * as plan from './fr/plan.ts';
import * as potsPage from './fr/pots-page.ts';
import * as proof from './fr/proof.ts';
import * as questions from './fr/questions.ts';
import * as read from './fr/read.ts';
import * as readAFile from './fr/read-a-file.ts';
import * as readings from './fr/readings.ts';
import * as record from './fr/record.ts';
import * as remedies from './fr/remedies.ts';
import * as remedyPage from './fr/remedy-page.ts';
import * as rise from './fr/rise.ts';
import * as running from './fr/running.ts';
import * as saveAFile from './fr/save-a-file.ts';
import * as saving from './fr/saving.ts';
import * as several from './fr/several.ts';
import * as shape from './fr/shape.ts';
import * as share from './fr/share.ts';
import * as sheet from './fr/sheet.ts';
import * as sheets from './fr/sheets.ts';
import * as signs from './fr/signs.ts';
import * as sketches from './fr/sketches.ts';
import * as small from './fr/small.ts';
import * as small1012 from './fr/small-10-12.ts';
import * as small1012Dough from './fr/small-10-12-dough.ts';
import * as small1012Oven from './fr/small-10-12-oven.ts';
import * as small1012Tasks from './fr/small-10-12-tasks.ts';
import * as small46 from './fr/small-4-6.ts';
import * as small46Dough from './fr/small-4-6-dough.ts';
import * as small46Oven from './fr/small-4-6-oven.ts';
import * as small46Tasks from './fr/small-4-6-tasks.ts';
import * as small79 from './fr/small-7-9.ts';
import * as small79Dough from './fr/small-7-9-dough.ts';
import * as small79Oven from './fr/small-7-9-oven.ts';
import * as small79Tasks from './fr/small-7-9-tasks.ts';
import * as soft from './fr/soft.ts';
import * as soundCheck from './fr/sound-check.ts';
import * as start from './fr/start.ts';
import * as starter from './fr/starter.ts';
import * as steps from './fr/steps.ts';
import * as swaps from './fr/swaps.ts';
import * as tags from './fr/tags.ts';
import * as tasks from './fr/tasks.ts';
import * as timers from './fr/timers.ts';
import * as trouble from './fr/trouble.ts';
import * as verdicts from './fr/verdicts.ts';
import * as voice from './fr/voice.ts';
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
  questions,
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
