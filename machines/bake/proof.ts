import { entering } from '../meta.ts';
import { bakeSetup } from './bake-setup.ts';

/** Counter, fridge, the looks at a cold loaf. */
export const proof = bakeSetup.createStateConfig({
  initial: 'counter',
  states: {
    counter: {
      entry: entering('proof.counter'),
      meta: { waits: 'end' },
      on: { due: 'toFridge', counterDone: 'toFridge' },
    },
    toFridge: {
      entry: entering('proof.toFridge'),
      meta: { call: 'act' },
      on: { inFridge: 'retard' },
    },
    retard: {
      entry: entering('proof.retard'),
      meta: { waits: 'look' },
      on: { due: 'look', loafSeen: 'look' },
    },
    look: {
      entry: entering('proof.look'),
      meta: { call: 'look', list: 'loafSigns' },
      on: {
        answer: { guard: { type: 'isAsked', params: { list: 'loafSigns' } }, actions: 'answer' },
        loafReady: '#bake.oven.queued',
        loafNotYet: 'retard',
        loafOver: '#bake.oven.queued',
      },
    },
  },
});
