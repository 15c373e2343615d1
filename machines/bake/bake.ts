import { entering } from '../meta.ts';
import { bakeSetup } from './bake-setup.ts';
import { bulk } from './bulk.ts';
import { cool, oven, rescue } from './finish.ts';
import { levain } from './levain.ts';
import { mix } from './mix.ts';
import { proof } from './proof.ts';
import { read } from './read.ts';
import { shape } from './shape.ts';

/** One bake, from the read-through to its note. One a batch. */
export const bakeMachine = bakeSetup.createMachine({
  id: 'bake',
  options: { maxIterations: 50 },
  context: ({ input }) => ({
    ...input,
    marks: {},
    entered: {},
    byDue: false,
    answers: {},
    tasks: {},
    touches: 0,
    readings: {},
  }),
  initial: 'read',
  on: {
    reading: { actions: 'read' },
    corrected: { actions: 'read' },
    judged: { actions: 'judge' },
    lead: { guard: 'mayCall', actions: 'callTask' },
    taskDone: { guard: 'isTask', actions: 'closeTask' },
    fewer: { guard: 'remain', actions: 'giveUp' },
    ended: '.ended',
  },
  states: {
    read,
    levain,
    mix,
    bulk,
    shape,
    proof,
    oven,
    cool,
    rescue,
    done: { type: 'final', entry: entering('done') },
    ended: { type: 'final', entry: entering('ended') },
  },
});
