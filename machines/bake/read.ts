import { entering } from '../meta.ts';
import { bakeSetup } from './bake-setup.ts';

/** Read-through and the checklist before anything is wet. */
export const read = bakeSetup.createStateConfig({
  initial: 'plan',
  states: {
    plan: { entry: entering('read.plan'), on: { readThrough: 'list' } },
    list: {
      entry: entering('read.list'),
      meta: { list: 'beforeStart' },
      on: {
        answer: [
          {
            guard: { type: 'completes', params: { list: 'beforeStart' } },
            target: '#bake.levain.feed',
          },
          { guard: { type: 'isAsked', params: { list: 'beforeStart' } }, actions: 'answer' },
        ],
      },
    },
  },
});
