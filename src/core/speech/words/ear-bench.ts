import { inTongue } from '../tongue.ts';

/** The ear beside an act: what it does, and what may be said to it now. */
export const earBench = inTongue('ear-bench', 'earBench', {
  shut: 'Ear shut',
  say: 'Say: {words}',
  digits: 'Say the digits',
  speaks: 'I hear you',
  tiles: 'By hand, please',
  /** In bigger words there is room for one. */
  short: { open: 'Open', shut: 'Shut', tiles: 'Press', lost: 'Retry' },
  /** Each is a press that tries it once more. */
  lost: {
    denied: 'Ear barred: tap here',
    none: 'No mic: tap here',
    gone: 'Mic gone: tap here',
    failed: 'Ear is out: tap here',
  },
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
