import { inTongue } from '../tongue.ts';

/** The day while it runs: what moved, and what to do when something comes up. Read, not said. */
export const live = inTongue('live', 'live', {
  title: 'The day so far',
  open: 'The day’s plan',
  asPlanned: 'All as planned.',
  over: 'All of this plan is done.',
  none: 'No day is planned.',
  working: 'Planning the day again',
  undecided: 'No answer yet. The plan stands.',
  take: 'Take the new plan',
  keep: 'Keep the old plan',
  taken: 'The new plan stands.',
  came: 'Something came up',
  print: 'Print the day',
  calendar: 'To the calendar',
  shared: 'The calendar has a copy. It does not ring for the oven.',
  notShared: 'The file could not be handed on.',
  back: 'Back',
  columns: {
    touch: 'What',
    when: 'When',
    was: 'Was',
    now: 'Now',
    fine: 'Fine until',
    last: 'Not after',
  },
  bread: 'Bread',
  frozen: 'stays',
  look: 'Look at {name} at {time}.',
  looks: 'Look at {name} at {time}, then {until}.',
  ofBake: '{bake}: {part}',
  others: '{name} must give way too.',
  clockBack: 'The clock was set back {length}. The dough keeps its time: bread at {time}.',
  nextBowls: '{touch}. {bowls}',
  ironAway: '{touch} stays at {time}: someone must be here.',
} as const);

/** One sentence: what moves, and why. {touch} begins it, {time} is its new hour. */
export const movedWhy = inTongue('live', 'movedWhy', {
  plain: '{touch} moves to {time}, from {until}.',
  fresh: '{touch} at {time}.',
  because: '{touch} moves to {time}: {part}.',
  soonerWait: '{name} is ready {length} sooner',
  laterWait: '{name} is ready {length} later',
  soonerDone: '{name} was {length} sooner',
  laterDone: '{name} was {length} late',
  overdue: '{name} is {length} overdue',
} as const);

/** What waits, by the touch before it; `it` of several. */
export const waitNames = inTongue('live', 'waitNames', {
  'feed levain': 'the levain',
  mix: 'the dough',
  'salt and water': 'the dough',
  divide: 'the dough',
  shape: 'the loaf',
  spoon: 'the loaf',
  'to fridge': 'the loaf',
  it: 'it',
} as const);

/** A touch as a thing that was done or was not. */
export const touchNouns = inTongue('live', 'touchNouns', {
  'feed levain': 'the feed',
  mix: 'the mix',
  'salt and water': 'the salt',
  fold: 'fold {count}',
  lamination: 'the sheet fold',
  divide: 'the dividing',
  shape: 'the shaping',
  spoon: 'the spooning',
  'to fridge': 'the fridge',
  'oven on': 'the oven',
  load: 'the load',
  'lid lift': 'the lid',
  vent: 'the steam',
  unload: 'the unloading',
} as const);

/** Something came up: which, and for how long. */
export const cameUp = inTongue('live', 'cameUp', {
  title: 'What came up?',
  away: 'Called away',
  overslept: 'Overslept',
  foldMissed: 'Missed a fold',
  levainLate: 'Levain is late',
  ovenDead: 'Oven is dead',
  when: 'When do you go?',
  inLength: 'In {length}',
  howLong: 'For how long?',
  howLate: 'By how much?',
  ovenBack: 'When does it work again?',
  best: 'Do this',
  fallback: 'Otherwise',
  takeThis: 'Do it this way',
  nothing: 'No plan fits.',
  flat: 'Bake flat breads in a pan now.',
  spoils: 'Its filling does not keep. In doubt, throw it out.',
} as const);

/** The ways on, each in one or two sentences. */
export const waysOn = inTongue('live', 'waysOn', {
  asPlanned: 'Just go.',
  leaveFolds: 'Leave out {touch}.',
  lookFirst: 'Look at the dough before you go.',
  coolRoom: 'Stand {name} in the coolest room at {time}.',
  fridge: 'Put {name} into the fridge at {time}.',
  fridgeWorks: 'It still rises there, as much as in {length} out here.',
  warmPlace: 'Stand {name} warmer, at about {celsius}.',
  foldNow: 'Fold now.',
  fromNow: 'Go on from now.',
  waitCold: 'The loaves wait in the fridge.',
  backSooner: 'Be back {length} sooner, at {time}.',
  later: 'Bread is ready {length} later, at {time}.',
  then: 'Then {touch} at {time}.',
} as const);

/** What today looks like. `said` is spoken. */
export const today = inTongue('live', 'today', {
  first: '{touch} at {time}.',
  nothing: 'No more hands needed today.',
  hands: 'Hands needed {count} times today, {length} in all.',
  oneTouch: 'Hands needed once today, {length}.',
  bread: 'Bread ready {time}.',
  said: {
    next: '{time} is when your hands go in.',
    hands: 'Hands for {minutes}.',
    breadAt: 'Ready about {time}.',
    breadIn: 'Ready in about {minutes}.',
  },
} as const);

/** The page that hangs on the fridge. */
export const printed = inTongue('live', 'printed', {
  title: 'The day’s plan',
  made: 'Printed {time}. Where they differ, go by the tablet.',
  when: 'When',
  what: 'What',
  hands: 'Minutes',
  fine: 'Fine until',
  last: 'Not after',
  done: 'Done',
  ready: 'Bread ready',
  hot: 'At the oven, go by the tablet’s calls.',
} as const);
