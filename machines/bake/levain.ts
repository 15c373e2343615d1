import { entering } from '../meta.ts';
import { bakeSetup, looked } from './bake-setup.ts';

/** Feed, wait till ripe, keep starter back. */
export const levain = bakeSetup.createStateConfig({
  initial: 'feed',
  states: {
    feed: {
      entry: entering('levain.feed'),
      meta: { list: 'feed', hazard: 'raw' },
      on: {
        answer: [
          { guard: { type: 'completes', params: { list: 'feed' } }, target: 'ripening' },
          { guard: { type: 'isAsked', params: { list: 'feed' } }, actions: 'answer' },
        ],
      },
    },
    ripening: {
      entry: entering('levain.ripening'),
      meta: { waits: 'look' },
      on: {
        due: 'look',
        levainSeen: 'look',
        levainRipe: { target: 'ripe', actions: looked('levain.look') },
      },
    },
    look: {
      entry: entering('levain.look'),
      meta: { call: 'look', list: 'levainSigns' },
      on: {
        answer: { guard: { type: 'isAsked', params: { list: 'levainSigns' } }, actions: 'answer' },
        levainRipe: 'ripe',
        levainNotYet: 'ripening',
        levainOver: 'ripe',
      },
    },
    ripe: { entry: entering('levain.ripe'), on: { starterKept: '#bake.mix.weigh' } },
  },
});
