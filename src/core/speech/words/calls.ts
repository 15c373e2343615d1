import { inTongue } from '../tongue.ts';
import type { BakeStage, OvenStage } from '../../records/stage.ts';

/** Call words: each kind has its own word, shape and rhythm. */
export const callWords = inTongue('calls', 'callWords', {
  look: 'Come and look',
  act: 'It’s time',
  hot: 'Hot: now',
} as const);

/** Captions and speech of calls; {name} is the stage's subject. A hot call has no `snooze`. */
export const calls = inTongue('calls', 'calls', {
  look: 'Come and look: {name}.',
  act: 'It’s time: {name}.',
  hot: 'Hot, now: {name}. Children, stand back.',
  /** Hands that lift a lid are told where the steam goes. */
  lid: 'Hot: {name}, away from you: steam. Children, stand back.',
  /** Behind the words of another call that came with it. */
  then: 'Then: {name}.',
  /** Two that came at once and are short: of one thing in two bakes, of two, and a look behind an act. */
  both: '{bake} and {other}',
  also: '{name}, and {other}',
  alsoLook: '{name}, and look at {other}',
  reminder: 'Still waiting: {name}.',
  snooze: 'In 2 minutes',
  /** Under it, by how often it may still be put off. */
  snoozesLeft: { 1: '1 left', 2: '2 left' },
  /** Said as it is taken, by how often was left; and shown until it calls again. */
  putOff: { 1: 'I call one last time, in 2 minutes.', 2: 'I call again in 2 minutes.' },
  quietTill: 'Calls at {time}',
} as const);

/** What each stage that calls is about, as it follows the call word. */
export const callSubjects = inTongue('calls', 'callSubjects', {
  'levain.look': 'the levain',
  'mix.salt': 'the salt goes in',
  'bulk.fold': 'fold the dough',
  'bulk.spread': 'spread the dough',
  'bulk.look': 'the dough',
  'shape.finalShape': 'shape the loaves',
  'proof.toFridge': 'loaves into the fridge',
  'proof.look': 'the loaves in the fridge',
  'proof.poke': 'the warm loaves',
  'cool.handOver': 'the cool loaves',
  turnOn: 'the oven goes on',
  poke: 'check the next loaf',
  lift: 'lift the lid off {pot}',
  vent: 'let the steam out',
  judge: 'look at the crust',
  turnOff: 'the oven goes off',
} as const satisfies Partial<Record<BakeStage | OvenStage, string>>);
