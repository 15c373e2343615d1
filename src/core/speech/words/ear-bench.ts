import { inTongue } from '../tongue.ts';

/** The ear beside an act: what it does, and what may be said to it now. */
export const earBench = inTongue('ear-bench', 'earBench', {
  shut: 'Ear shut',
  opens: 'A press opens it',
  say: 'Say: {phrases}',
  digits: 'Say the digits',
  speaks: 'I hear you',
  tiles: 'By hand, please',
  lost: {
    denied: 'Ear: not allowed',
    none: 'No microphone',
    gone: 'Microphone gone',
    failed: 'Ear failed',
  },
  again: 'Tap to try again',
  /** Between two of them. */
  or: '{one}, {other}',
} as const);

/** What is said for each press. */
export const earPhrases = inTongue('ear-bench', 'earPhrases', {
  done: 'that’s done',
  takeBack: 'take that back',
  sayAgain: 'say that again',
  longer: 'how much longer',
  hush: 'hush please',
  reading: 'new reading',
  notYet: 'not yet',
  ready: 'it’s ready',
  showMe: 'show me how',
  lidOff: 'lid is off',
  springs: 'springs back',
  slowly: 'slowly',
  stays: 'stays',
  yes: 'yes',
  no: 'no',
} as const);

/** What it answers. */
export const earSays = inTongue('ear-bench', 'earSays', {
  tiles: 'I did not understand. By hand, please.',
  digits: 'Say it digit by digit.',
  agree: 'Say yes or no.',
  byHand: 'This is done by hand only.',
  lost: {
    denied: 'I may not listen here. By hand, please.',
    none: 'I find no microphone. By hand, please.',
    gone: 'The microphone is gone. By hand, please.',
    failed: 'I cannot listen now. By hand, please.',
  },
} as const);
