import { inTongue } from '../tongue.ts';

/** What is kept of a bake beside its facts. Shown, never said. */
export const keepsakes = inTongue('keepsakes', 'keepsakes', {
  title: 'Album of this bake',
  detail: 'On this tablet. You can erase it.',
  opening: 'One moment',
  closed: 'It cannot be opened',
  closedDetail: 'Nothing was changed. Open this page again.',
  back: 'The bake',
  photos: 'Photos',
  latest: 'The latest photo',
  note: 'Note',
  voices: 'Spoken notes',
  who: 'Who ate it',
  tags: 'Tags',
  none: 'none yet',
  of: '{n} of {most}',
  hide: 'Hide this bake',
  hidden: 'Hidden: the list leaves it out.',
  show: 'Show it again',
  erase: 'Erase for good',
  later: 'Further on',
  first: 'From the top',
  /** Letters of a note or of names that stand on a press, before it goes on unread. */
  goesOn: '{words}…',
} as const);

/** Photos of crust and crumb. */
export const photoWords = inTongue('keepsakes', 'photoWords', {
  none: 'No photo yet',
  noneDetail: 'Crust or crumb: kept small, without place or time.',
  one: 'Photo {n} of {of}',
  oneDetail: '{date}',
  alt: 'Photo {n} of this bake',
  camera: 'Use the camera',
  choose: 'Choose one',
  next: 'Next photo',
  erase: 'Erase this one',
  eraseAsk: 'Erase this photo for good?',
  eraseDetail: 'There is no way back: no file brings it here again.',
  busy: 'Making it small',
  full: 'That is as many as one bake keeps.',
} as const);

/** What somebody says of a bake. */
export const spokenWords = inTongue('keepsakes', 'spokenWords', {
  title: 'Spoken notes',
  none: 'Say what to remember, a minute at most.',
  detail: 'They leave this tablet only in a file you tick them for.',
  one: 'Note {n}',
  at: '{date} {time}',
  plays: 'stop',
  record: 'Record',
  recordThen: 'press again to stop',
  stop: 'Stop',
  heard: 'I hear you',
  unheard: 'Speak now',
  wait: 'One moment',
  full: 'Full',
  fullThen: 'erase one first',
  erase: 'Erase note {n}',
  eraseAsk: 'Erase note {n} for good?',
  eraseDetail: 'There is no way back: no file brings it here again.',
  lost: 'It cannot be heard on this tablet.',
  noMicrophone: 'The microphone cannot be reached. Open this page again.',
  why: {
    denied: 'The microphone is not allowed. Allow it in the browser.',
    none: 'This tablet has no microphone.',
    silent: 'Nobody was heard. Nothing was kept.',
    failed: 'That could not be recorded. Try once more.',
    stopped: 'It stopped, and nothing was kept: a call comes first.',
    hot: 'Not while it is hot or a call comes.',
  },
} as const);

/** Who had this bread. */
export const whoWords = inTongue('keepsakes', 'whoWords', {
  title: 'Who ate it?',
  detail: 'Press each. Only a mark is kept; names stay in the circle.',
  home: 'At home',
  ate: 'ate it',
  nobody: 'Neighbours of your circle show here too.',
  lost: 'The circle cannot be opened. Its names are not shown.',
} as const);

/** Words that a bake is found again by. */
export const tagPage = inTongue('keepsakes', 'tagPage', {
  title: 'Which tags?',
  detail: 'Press one to put it on, again to take it off.',
  on: 'on',
  own: 'Your own words',
  ownAsk: 'Which words of your own?',
  ownDetail: 'Keep it short. It is erased with the rest.',
  full: 'That is as many as one bake keeps.',
} as const);

/** The typed note. */
export const noteWords = inTongue('keepsakes', 'noteWords', {
  ask: 'What should be remembered?',
  detail: 'It goes into the saved file as it is, names too.',
} as const);

/** Gone, and not to be had back. */
export const eraseWords = inTongue('keepsakes', 'eraseWords', {
  ask: 'Erase it all for good?',
  detail: 'Photos, spoken notes, note, who ate it, your own tags.',
  stays: 'The facts of the bake stay: times, weights, readings, crumb.',
  hold: 'Hold to erase',
  holding: 'Keep holding',
  two: 'Or two taps, far apart',
  first: 'Tap here first',
  second: 'Then tap here',
  keep: 'Keep it',
} as const);

/** What is told of what is kept of a bake, without a word of what stands in it. */
export const keepsakesTold = inTongue('keepsakes', 'keepsakesTold', {
  misread:
    '{count} of what is kept of bakes cannot be read and is left out. First: {path}, expected {expected}, got {got}.',
  full: 'The tablet is full. Nothing was changed: make room, then press again.',
  shows: 'This page only shows the kitchen. Change it in the other one.',
  closed: 'It could not be written. Nothing was changed: press again.',
} as const);
