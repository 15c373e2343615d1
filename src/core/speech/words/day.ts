import { inTongue } from '../tongue.ts';

/** Touches on the tape: as short as they can be told. {count} is which of several. */
export const tapeNames = inTongue('day', 'tapeNames', {
  'feed levain': 'Feed',
  mix: 'Mix',
  'salt and water': 'Salt',
  fold: 'Fold {count}',
  lamination: 'Sheet',
  divide: 'Divide',
  shape: 'Shape',
  spoon: 'Into tin',
  'to fridge': 'Fridge',
  'oven on': 'Oven on',
  load: 'Load {count}',
  ready: 'Ready',
} as const);

/** Waits on the tape, a line each. */
export const tapeNotes = inTongue('day', 'tapeNotes', {
  levain: ['{length}, ripe', '{time} – {until}'],
  bulk: ['bulk ready', '{time} – {until}'],
  proof: ['proof ready', '{time} – {until}'],
  cold: ['{length} cold'],
  cool: ['{length} to cool'],
  away: '{name} till {time}',
  lid: 'lid {time}, out {until}',
  vent: 'vent {time}, out {until}',
  out: 'out {time}',
} as const);

/** What the day is asked with. */
export const askPage = inTongue('day', 'askPage', {
  title: 'Plan a day',
  edge: 'The hours of a day',
  due: 'Ready when?',
  startNow: 'Start now',
  startNowDetail: 'no set time',
  bread: 'Another bread',
  away: 'Asleep or out',
  off: 'Leave it out',
  slab: 'Make a plan',
  then: 'you can change it',
  bake: '{name}, {loaves}',
  /** {grams} of dough, where it is not the formula's own piece. */
  sized: '{count}\u00a0×\u00a0{grams} dough',
  bakeSized: '{name}, {count}\u00a0×\u00a0{grams} dough',
  today: 'Today',
  tomorrow: 'Tomorrow',
  later: 'Later days',
  sooner: 'Sooner days',
  hour: '{date}, at what time?',
  hourSaid: 'Set to {time}.',
  earlier: 'Half an hour earlier',
  laterHour: 'Half an hour later',
  warmDetail: 'About how warm it will be while you bake.',
  keyIn: 'Key it in',
  past: 'That time is past. Pick a later one.',
} as const);

/** When no hands are there. */
export const awayPage = inTongue('day', 'awayPage', {
  title: 'When are you away?',
  detail: 'No step is planned in these hours.',
  addWeekly: 'Add weekly',
  addOnce: 'Add once',
  what: 'What is it?',
  asleep: 'asleep',
  work: 'at work',
  out: 'out',
  days: 'On which days?',
  everyDay: 'every day',
  weekdays: 'Mon – Fri',
  weekend: 'Sat, Sun',
  date: 'On which day?',
  from: 'From when?',
  to: 'Until when?',
  span: '{time}–{until}',
  bends: 'May shift a little',
  rigid: 'Never shifts',
  remove: 'Take it off',
  back: 'When are you away?',
  reversed: 'It ends before it begins. Change one of its times.',
} as const);

/** A plan as it is shown. */
export const dayPlan = inTongue('day', 'dayPlan', {
  laying: 'Looking for a plan',
  layingDetail: 'It takes a moment.',
  better: 'Still looking for a better one.',
  maybeBetter: 'There may be a better one.',
  undecided: 'No plan found yet',
  undecidedDetail: 'One bread fewer is quicker to plan.',
  failed: 'The plan could not be made',
  failedDetail: 'Nothing is lost. Press to look again.',
  again: 'Look again',
  ready: 'Ready {date} {time}',
  kitchen: 'kitchen {celsius}',
  alt: 'The day on a tape. Hands needed {count} times, ready {date} {time}.',
  take: 'Take it',
  takeThen: 'first: {name}, {time}',
  change: 'Change it',
  changeThen: 'nothing is lost',
  say: 'Say the day',
  table: 'As a table',
  tape: 'As a tape',
  giveUp: 'Give it up',
  giveUpAsk: 'Give up this plan?',
  giveUpSaid: 'Bakes that have begun go on.',
  keep: 'No, keep it',
  giveUpYes: 'Yes, give it up',
  feedNow: 'Feed now',
  feedThen: '{ratio}, ripe about {time}',
  beginThen: '{name} begins',
  next: 'next: {name}, {time}',
  over: 'all of it is done',
  print: 'Print it',
  calendar: 'To the calendar',
  backToPlan: 'Back to the plan',
  bakes: 'Its bakes',
  columns: { time: 'When', what: 'What', fine: 'Fine until', last: 'Not after' },
} as const);

/** One touch of a plan. */
export const touchPage = inTongue('day', 'touchPage', {
  title: '{name}, {time}',
  usable: '{ratio}. The levain is good from {time} to {until}.',
  set: 'You set this time.',
  fixed: 'It does not move.',
  earlier: '15 min earlier',
  later: '15 min later',
  pin: 'Keep this time',
  free: 'Let it move',
  noRoom: 'Nothing fits with it at {time}.',
  noFree: 'No other plan was found. It keeps its time.',
} as const);

/** Where nothing fits, or it cannot be asked at all; each with what would do. */
export const nothingPage = inTongue('day', 'nothingPage', {
  taken: 'Agreed: {note}',
  fewer: '{bake}: {loaves} only.',
  startNow: '{bake}: start now, with no set time.',
  allOf: 'Take all of these',
  noBakes: 'No bread is chosen.',
  sameName: 'Two breads have one name.',
  noHour: '{bake}: no time is set.',
  neverFree: 'You are away all day, every day. Free an hour.',
  reversed: '{name}: it ends before it begins.',
  fridgeShort: '{bake}: {loaves} in a fridge for {count}.',
  bowlsShort: '{bake}: the dough needs {count} bowls.',
  tooMany: '{count} breads in one day at most.',
  toAsk: 'Change what is asked',
} as const);
