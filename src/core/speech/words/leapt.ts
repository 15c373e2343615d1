import { inTongue } from '../tongue.ts';

/** The tablet's clock was moved while the page was open. {minutes} is a length: "3 h". */
export const leapt = inTongue('leapt', 'leapt', {
  back: 'The tablet’s clock went back {minutes}. Every wait goes on as before.',
  ahead: 'The clock jumped {minutes} ahead. Was it set, or the tablet asleep?',
  which: 'Say which',
  /** The same beside a running bake: a press that leads to it. */
  beside: { back: 'Clock went back', ahead: 'Clock went ahead' },
  /** Where it may well have been asleep: under More. */
  askMore: 'Was the clock set?',
  title: 'The clock went {minutes} ahead',
  backTitle: 'The clock went back {minutes}',
  backThen: 'Every wait goes on as before.',
  backHours: 'The times here follow the clock: check that it is right.',
  slept: 'It was asleep',
  sleptThen: 'Asleep: the hours went by. All times here are right.',
  set: 'It was set',
  setThen: 'Set: no time went by. Every wait gets {minutes} longer.',
  said: 'Every wait is now that much longer. Check the dough.',
} as const);
