import { entering } from '../meta.ts';
import { bakeSetup, looked } from './bake-setup.ts';

const ready = { target: '#bake.oven.queued', actions: looked('proof.poke') } as const;

/**
 * Counter, fridge, the looks at a cold loaf; or a warm proof, with the oven wanted hot by its end. A
 * cold loaf that has hardly grown stands out as in a warm proof; one far over gets a new goal.
 */
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
      on: {
        due: 'look',
        loafSeen: 'look',
        loafReady: { target: '#bake.oven.queued', actions: looked('proof.look') },
      },
    },
    look: {
      entry: entering('proof.look'),
      meta: { call: 'look', list: 'loafSigns' },
      on: {
        answer: { guard: { type: 'isAsked', params: { list: 'loafSigns' } }, actions: 'answer' },
        loafReady: '#bake.oven.queued',
        loafNotYet: 'retard',
        loafOver: '#bake.oven.queued',
        // Out of the cold they rise as warm loaves do, oven and all.
        standOut: 'warm',
        loafFlat: '#bake.rescue.tray',
      },
    },
    warm: {
      entry: entering('proof.warm'),
      meta: { waits: 'turn' },
      on: {
        due: [{ guard: 'looksFirst', target: 'poke' }, { target: 'soon' }],
        loafSeen: 'poke',
        loafReady: ready,
      },
    },
    // The same wait goes on; the oven, which asks to be turned on, sees that loaves are coming.
    soon: {
      entry: entering('proof.soon'),
      meta: { waits: 'look' },
      on: { due: 'poke', loafSeen: 'poke', loafReady: ready },
    },
    poke: {
      entry: entering('proof.poke'),
      meta: { call: 'look', list: 'warmSigns' },
      on: {
        answer: { guard: { type: 'isAsked', params: { list: 'warmSigns' } }, actions: 'answer' },
        loafReady: '#bake.oven.queued',
        loafNotYet: [{ guard: 'ovenWanted', target: 'soon' }, { target: 'warm' }],
        loafOver: '#bake.oven.queued',
        loafFlat: '#bake.rescue.tray',
      },
    },
  },
});
