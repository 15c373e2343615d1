import type { EarPhrase } from '../../ear/phrases.ts';
import { inTongue } from '../tongue.ts';

/**
 * What is said to the ear, as it is to be said: short, and as unlike each other in sound as may be. Where a
 * press does the same, it says so in the same words.
 */
export const earPhrases: Readonly<Record<EarPhrase, string>> = inTongue(
  'ear-kitchen',
  'earPhrases',
  {
    done: 'That’s done',
    takeBack: 'Take that back',
    sayAgain: 'Say that again',
    longer: 'How much longer?',
    hush: 'Hush please',
    reading: 'New reading',
    notYet: 'Not yet',
    ready: 'It’s ready',
    showMe: 'Show me',
    lidOff: 'Lid off',
    springs: 'Springs up',
    slowly: 'Comes slowly',
    stays: 'Dent stays',
    yes: 'Yes',
    no: 'No',
    zero: 'Zero',
    one: 'One',
    two: 'Two',
    three: 'Three',
    four: 'Four',
    five: 'Five',
    six: 'Six',
    seven: 'Seven',
    eight: 'Eight',
    nine: 'Nine',
    point: 'Point',
  },
);

/** The ear in the Kitchen: whether it listens, and what it is. */
export const earKitchen = inTongue('ear-kitchen', 'earKitchen', {
  title: 'The ear',
  is: { off: 'Off', plain: 'Plain', learned: 'Learned' },
  opening: 'One moment',
  closed: 'It cannot be opened',
  closedDetail: 'Nothing was changed. Open this page again.',
  offDetail: 'It lets a voice press for floury hands.',
  nobodyDetail: 'It is on, and knows no voice yet.',
  onDetail: 'What may be said stands beside each step.',
  care: 'It opens no gate: hot, blade and machine stay by hand.',
  engine: 'Does it listen?',
  engineDetail: 'For some seconds after a prompt, a press or a pedal.',
  means: {
    off: 'The ear stays shut.',
    plain: 'It came with this page. It wants a calm kitchen.',
    learned: '{value} come first, once. It bears more noise.',
  },
  /** What is fetched now. */
  comes: 'Fetching {value}. Stay on this page.',
  comesPlain: 'One moment',
  comesNot: 'It did not come. It stays as it was: try again online.',
  expect: 'What to expect',
  /** What is promised, and what is not. */
  expected: [
    'It knows only who has spoken here, and in this tongue.',
    'A loud kitchen makes it deaf: keep to the tiles.',
    'No sound is kept, and nothing leaves this tablet.',
    'No saved file has these voices. Elsewhere, speak anew.',
    'This page is for grown-ups, as all of the Kitchen.',
  ],
  erase: 'Forget every voice',
  eraseAsk: 'Forget every voice for good?',
  eraseDetail: 'In every tongue. No file brings one back. The ear goes off.',
  full: 'The tablet is full. Nothing was changed: make room, then press again.',
  notWritten: 'It could not be written. Nothing was changed: press again.',
} as const);

/** Whose voices it knows: a mark stands in for a name. */
export const earPeople = inTongue('ear-kitchen', 'earPeople', {
  title: 'Whose voices',
  nobody: 'nobody yet',
  nobodyDetail: 'It knows no voice yet.',
  count: '{count} known',
  add: 'Add a voice',
  most: 'There are as many as there are marks.',
  detail: 'Press one to go on, try it or forget it.',
  markDetail: 'It stands in for a name.',
  who: 'Whose voice is it?',
  whoDetail: 'A grown-up stays beside a child.',
  ages: { grown: 'Grown-up', child: 'Child' },
  of: '{done} of {of}',
  again: 'Some phrases were said to the plain ear: say them anew.',
  goOn: 'Go on speaking',
  phrases: 'Phrases',
  digits: 'Digits',
  erase: 'Forget this voice',
  eraseAsk: 'Forget this voice for good?',
  eraseDetail: 'All it has said here goes. No file brings it back.',
} as const);

/** A phrase is said until it is known. */
export const earTakes = inTongue('ear-kitchen', 'earTakes', {
  phrase: '“{words}”',
  detail: 'Say it three times, as you do at work. Then the next.',
  known: 'This one is known. Say it anew, or go on.',
  begin: 'Begin',
  beginAgain: 'Go on',
  beginThen: 'then say it {count} times',
  lastThen: 'then say it once more',
  unheard: 'Say it now',
  heard: 'I hear you',
  shut: 'The ear is shut',
  ends: 'it ends by itself',
  waits: 'One moment',
  of: '{done} of {of}',
  takes: '{done} of {of} said',
  before: 'Phrase before',
  skip: 'Skip this one',
  list: 'All phrases',
  keep: 'Keep it',
  keepThen: 'then the next phrase',
  yes: 'Known',
  anew: 'Say it anew',
  no: 'Not yet',
  on: 'Further on',
  back: 'Further back',
  done: 'That was the last phrase',
  doneDetail: 'Digits are for readings. They may wait.',
  doneDigits: 'That was the last digit',
  doneDigitsDetail: 'Now try how well it hears here.',
  toDigits: 'Digits now',
  why: {
    denied: 'The microphone is not allowed. Allow it in the browser.',
    none: 'This tablet has no microphone.',
    silent: 'Nobody was heard. Say it once more.',
    failed: 'That could not be heard. Say it once more.',
    stopped: 'It stopped: a call comes first.',
    hot: 'Not while it is hot or a call comes.',
  },
} as const);

/** One minute of listening, where it will be used. */
export const earTry = inTongue('ear-kitchen', 'earTry', {
  title: 'How well it hears here',
  detail: 'Turn the tap on. Stand where you work. Say what is shown.',
  few: 'It knows too few phrases to try. Say some first.',
  off: 'Choose first whether it listens.',
  begin: 'Begin',
  beginThen: 'it takes a minute',
  stop: 'Stop here',
  shown: 'Say it as it stands here.',
  of: '{done} of {of}',
  none: 'Nothing was said',
  result: '{count} of {of} heard right',
  well: 'It hears you well here.',
  often: 'Often. Come nearer, or turn the tap off.',
  seldom: 'Seldom. Come nearer or turn the tap off, else keep to the tiles.',
  /** Of those that were not. */
  wrong: 'Taken for another: {count}. Taking back undoes that.',
  room: {
    calm: 'The room was calm.',
    lively: 'The room was lively.',
    loud: 'The room was loud: it hears little then.',
  },
  gone: 'The microphone was taken away meanwhile.',
  again: 'Try again',
} as const);
