/** Words on what can be pressed, the same on every screen. */
export const controls = {
  thatsDone: 'That’s done',
  takeBack: 'Take that back',
  sayAgain: 'Say that again',
  newReading: 'New reading',
  notNow: 'Not now',
  why: 'Why?',
  notNowWhy: 'Not now, why?',
  howMuchLonger: 'How much longer?',
  hush: 'Hush please',
  wipe: 'Wipe the screen',
  wiping: 'Wipe away. It is locked for {seconds} s.',
  notYet: 'Not yet',
  itsReady: 'It’s ready',
  notSure: 'Not sure',
  goOn: 'Go on anyway',
  backToBench: 'Back to the bench',
  goTo: 'Go to {name}',
  endBake: 'End this bake',
  endBakeAsk: 'End {name}? Its record stays in the log.',
  endBakeHold: 'Hold to end it',
  keepBaking: 'Keep baking',
  noProbe: 'No probe here',
  smallHands: 'Small hands',
  otherBakes: 'Other bakes',
  bigger: 'Bigger',
  dark: 'Dark',
  light: 'Light',
  leftHand: 'Left hand',
  rightHand: 'Right hand',
  /** Nothing to take back. */
  nothingBack: 'Nothing to take back.',
  tookBack: 'Taken back: {name}.',
} as const;

/** Call words: each kind has its own word, shape and rhythm. */
export const callWords = {
  look: 'Come and look',
  act: 'It’s time',
  hot: 'Hot: now',
} as const;

/** Captions and speech of calls. `snooze` is not there for a hot call. */
export const calls = {
  look: 'Come and look: {name}.',
  act: 'It’s time: {name}.',
  hot: 'Hot, now: {name}. Children, stand back.',
  reminder: 'Still waiting: {name}.',
  snooze: 'In 2 minutes',
  silenced: 'Quiet now. It stays on the screen until it is done.',
} as const;

/** The keypad. */
export const keypad = {
  doughTemperature: 'Dough, °C',
  kitchenTemperature: 'Kitchen, °C',
  coreTemperature: 'Inside the loaf, °C',
  firstPiece: 'First piece, g',
  point: 'point',
  rubOut: 'Rub out',
  clear: 'Clear',
  enter: 'Key it in',
  close: 'Close',
  again: '{celsius} °C? Key it in once more, or change it.',
  kept: 'Kept, and marked as odd.',
} as const;
