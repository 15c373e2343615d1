import type { CallKind } from '../../../machines/ports.ts';
import { MINUTE } from '../../../src/core/units.ts';

/** Whose end of a wait it is, and the stage that time leads to. Written down by hand, not read of the machines. */
export const ENDS: Readonly<Record<string, readonly [mark: string, next: string]>> = {
  'levain.ripening': ['look', 'levain.look'],
  'mix.rest': ['end', 'mix.salt'],
  'bulk.between': ['touch', ''],
  'bulk.proving': ['look', 'bulk.look'],
  'shape.benchRest': ['end', 'shape.finalShape'],
  'proof.counter': ['end', 'proof.toFridge'],
  'proof.retard': ['look', 'proof.look'],
  'proof.warm': ['turn', ''],
  'proof.soon': ['look', 'proof.poke'],
  'cool.cooling': ['end', 'cool.handOver'],
  preheating: ['hot', ''],
  standing: ['poke', 'poke'],
  lidded: ['lid', 'lift'],
  steaming: ['vent', 'vent'],
  open: ['colour', 'judge'],
  recover: ['hot', 'gone'],
};

/** How a stage calls that time led into. */
export const CALLS: Readonly<Record<string, CallKind>> = {
  'levain.look': 'look',
  'mix.salt': 'act',
  'bulk.fold': 'act',
  'bulk.spread': 'act',
  'bulk.look': 'look',
  'shape.finalShape': 'act',
  'proof.toFridge': 'act',
  'proof.look': 'look',
  'proof.poke': 'look',
  'cool.handOver': 'look',
  turnOn: 'act',
  poke: 'act',
  lift: 'hot',
  vent: 'hot',
  judge: 'hot',
};

/** An oven left on calls anew so often, and so many times. */
export const LEFT_ON = { every: 10 * MINUTE, most: 12 } as const;
/** The minute's warning before a hot call rings not. */
export const WARNING = 'hands';
