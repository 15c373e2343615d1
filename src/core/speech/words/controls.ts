import { inTongue } from '../tongue.ts';

/** Words on what can be pressed, the same on every screen. */
export const controls = inTongue('controls', 'controls', {
  takeBack: 'Take that back',
  sayAgain: 'Say that again',
  /** Bigger words are longer than their place. */
  readOn: 'Read on',
  newReading: 'New reading',
  readingsSoFar: 'Readings so far',
  showPots: 'Show the pots',
  showSheet: 'Show the sheet',
  showRise: 'Show the rise',
  weighDough: 'Weigh the dough',
  weighPiece: 'Weigh a piece',
  probeCore: 'Probe the core',
  weighLoaf: 'Weigh a loaf',
  why: 'Why?',
  whyThis: 'Why this?',
  notNowWhy: 'Not now, why?',
  howMuchLonger: 'How much longer?',
  hush: 'Hush please',
  wipe: 'Wipe the screen',
  wiping: 'Wipe away. It is locked for {seconds} s.',
  notYet: 'Not yet',
  itsReady: 'It’s ready',
  /** In a wait, long before its look too. */
  readyNow: 'It’s ready now',
  goOn: 'Go on anyway',
  backToBench: 'Back to the bench',
  goTo: 'Go to {name}',
  endBake: 'End this bake',
  endBakeAsk: 'End {name}? Its record stays in the log.',
  endBakeHold: 'Hold to end it',
  fewer: 'Fewer loaves',
  fewerAsk: 'How many loaves now?',
  fewerRest: 'Bake what is left over as a roll, or throw it out.',
  fewerTake: 'That many',
  keepBaking: 'Keep baking',
  noProbe: 'No probe here',
  smallHands: 'Small hands',
} as const);

/** The keypad. */
export const keypad = inTongue('controls', 'keypad', {
  kitchenTemperature: 'Kitchen, {unit}',
  clear: 'Clear',
  /** What was keyed before and left is shown again, never taken by itself. */
  again: 'Keyed before: clear it if old.',
} as const);
